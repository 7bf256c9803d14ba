import { Checklist } from '../../db/checklist.js';
import { insertRow } from '../../db/insertRow.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { isClosed } from '../projects/isClosed.js';
import { beginTask } from './beginTask.js';
import { benchZone } from './benchZone.js';
import { checkSession } from './checkSession.js';
import { oneTimerAtATime } from './oneTimerAtATime.js';
import { noteHazards } from './noteHazards.js';
import { refuseSecondTimer } from './refuseSecondTimer.js';
import type { StartTimerInput } from './timer.inputs.js';
import { whatIsWorkedOn, type WorkedOn } from './whatIsWorkedOn.js';
import { whoWorks } from './whoWorks.js';
import { isForgottenTimer } from './sessionBounds.js';
import { WorkSessionEntity } from './workSession.entity.js';

/**
 * The timer is a session without an end: it is in the records, and survives a restart.
 * @param showsHazards whether the answer puts the hazards of the item before the person
 */
export async function startTimer(
  work: UnitOfWork,
  input: StartTimerInput,
  showsHazards = false,
): Promise<string> {
  const check = new Checklist(work);
  const person = await whoWorks(work, check, input.personId);
  const worked = await whatIsWorkedOn(work, check, input);
  const zone = await benchZone(work, input.zone);
  const startedAt = input.startedAt?.toISOString() ?? work.now;
  const times = { startedAtMs: Date.parse(startedAt), endedAtMs: null, zone, breaks: [] };
  checkSession(check, times, work.now, true);
  check.that(
    !isForgottenTimer(times, Date.parse(work.now)),
    'That is more than 16 hours ago. Record the session with its end instead.',
    ['startedAt'],
  );
  const note = check.text(input.note, ['note']);
  if (worked) refuseClosed(check, worked);
  check.done();
  if (!person || !worked) throw new Error('a timer without person or item passed its checks');
  await oneTimerAtATime(work, person.id);
  await refuseSecondTimer(work, person);
  const session = await insertRow(work, WorkSessionEntity, {
    personId: person.id,
    itemId: worked.item.id,
    taskId: worked.task?.id ?? null,
    startedAt,
    endedAt: null,
    zone,
    note,
  });
  await noteHazards(work, session, showsHazards);
  await beginTask(work, worked, session);
  return session.id;
}

function refuseClosed(check: Checklist, { item, task, project }: WorkedOn): void {
  const conflict = (message: string, path: string[]) => {
    check.add({ code: 'CONFLICT', message, path });
  };
  if (item.retiredAt !== null) {
    conflict(`${item.inventoryNumber} has left the collection.`, [task ? 'taskId' : 'itemId']);
  }
  if (task && (task.status === 'DONE' || task.status === 'DROPPED')) {
    conflict(`“${task.title}” is ${task.status.toLowerCase()}. Reopen it first.`, ['taskId']);
  }
  if (project && isClosed(project.status)) {
    conflict(
      `The project “${project.title}” is ${project.status.toLowerCase()}. Set it active again first.`,
      ['taskId'],
    );
  }
}
