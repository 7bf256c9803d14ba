import { changeRow } from '../../db/changeRow.js';
import { oneAtATime } from '../../db/oneAtATime.js';
import { queryInWork } from '../../db/queryInWork.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { stockGuard } from './stockGuard.js';
import { StockReservationEntity } from './stockReservation.entity.js';

/** What was put aside and not used is free again: the work is over, or the part is gone. */
export async function releaseReservations(
  work: UnitOfWork,
  whose: { projectId: string } | { taskId: string } | { lotId: string },
): Promise<void> {
  await oneAtATime(work, stockGuard);
  const [condition, id] =
    'projectId' in whose
      ? ['task_id IN (SELECT id FROM task WHERE project_id = ?)', whose.projectId]
      : 'taskId' in whose
        ? ['task_id = ?', whose.taskId]
        : ['lot_id = ?', whose.lotId];
  const open = await queryInWork<{ id: string }>(
    work,
    `SELECT id AS "id" FROM stock_reservation WHERE released_at IS NULL AND ${condition}`,
    [id],
  );
  for (const reservation of open) {
    await changeRow(work, StockReservationEntity, reservation.id, null, { releasedAt: work.now });
  }
}
