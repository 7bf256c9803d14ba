import { queryInWork } from '../../db/queryInWork.js';
import { Refusal } from '../../db/refusal.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import type { PartyEntity } from '../parties/party.entity.js';
import { localMinute } from './localMinute.js';

interface Running {
  startedAt: string;
  zone: string;
  inventoryNumber: string;
  itemName: string | null;
  taskTitle: string | null;
}

/** Nobody works at two things at once: the timer that runs is named, so that it can be stopped. */
export async function refuseSecondTimer(work: UnitOfWork, person: PartyEntity): Promise<void> {
  const [running] = await queryInWork<Running>(
    work,
    `SELECT work_session.started_at AS "startedAt", work_session.zone AS "zone",
       item.inventory_number AS "inventoryNumber", item.name AS "itemName",
       task.title AS "taskTitle"
     FROM work_session JOIN item ON item.id = work_session.item_id
     LEFT JOIN task ON task.id = work_session.task_id
     WHERE work_session.person_id = ? AND work_session.ended_at IS NULL`,
    [person.id],
  );
  if (!running) return;
  const { inventoryNumber, itemName, taskTitle, startedAt, zone } = running;
  const name = itemName === null ? '' : ` “${itemName}”`;
  const task = taskTitle === null ? '' : `, task “${taskTitle}”`;
  throw Refusal.conflict(
    `A timer of ${person.name} has been running on ${inventoryNumber}${name}${task} ` +
      `since ${localMinute(startedAt, zone)}. Stop it first.`,
    ['personId'],
  );
}
