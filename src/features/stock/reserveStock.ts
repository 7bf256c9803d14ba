import { Checklist } from '../../db/checklist.js';
import { insertRows } from '../../db/insertRow.js';
import { oneAtATime } from '../../db/oneAtATime.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { TaskEntity } from '../tasks/task.entity.js';
import { pickStock } from './pickStock.js';
import { readWish } from './readWish.js';
import type { ReserveStockInput } from './stock.inputs.js';
import { stockGuard } from './stockGuard.js';
import { StockReservationEntity } from './stockReservation.entity.js';

/** Puts spares aside for a task: all that are wanted, or none. @returns a reservation a lot. */
export async function reserveStock(work: UnitOfWork, input: ReserveStockInput): Promise<string[]> {
  await oneAtATime(work, stockGuard);
  const check = new Checklist(work);
  const wish = await readWish(check, input, []);
  const note = check.text(input.note, ['note']);
  check.done();
  const { taskId } = wish;
  const task = await work.manager.findOneBy(TaskEntity, { id: taskId ?? '' });
  check.that(
    task !== null && task.status !== 'DONE' && task.status !== 'DROPPED',
    'This task is done or dropped: it needs no spares any more.',
    ['taskId'],
  );
  const picks = await pickStock(work, check, { ...wish, taskId: null }, ['quantity']);
  check.done();
  const rows = await insertRows(
    work,
    StockReservationEntity,
    picks.map(({ lot, quantity }) => ({
      lotId: lot.lotId,
      taskId: taskId ?? '',
      quantity,
      reservedAt: work.now,
      releasedAt: null,
      note,
    })),
  );
  return rows.map(({ id }) => id);
}
