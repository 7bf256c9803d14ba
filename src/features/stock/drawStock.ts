import { pastInstant } from '../../api/kit/pastInstant.js';
import { Checklist } from '../../db/checklist.js';
import { insertRows } from '../../db/insertRow.js';
import { oneAtATime } from '../../db/oneAtATime.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { pickStock } from './pickStock.js';
import { readWish } from './readWish.js';
import type { DrawStockInput } from './stock.inputs.js';
import { StockDrawEntity } from './stockDraw.entity.js';
import { stockGuard } from './stockGuard.js';

/** Spares leave the shelf: all that are wanted, or none. @returns a draw a lot or reservation. */
export async function drawStock(work: UnitOfWork, input: DrawStockInput): Promise<string[]> {
  await oneAtATime(work, stockGuard);
  const check = new Checklist(work);
  const wish = await readWish(check, input, []);
  check.that(input.reason !== 'FITTED', 'Fit it with `fitComponent`, and it leaves the shelf.', [
    'reason',
  ]);
  const drawnAt = pastInstant(check, work, input.drawnAt, ['drawnAt']);
  const note = check.text(input.note, ['note']);
  check.done();
  const picks = await pickStock(work, check, wish, ['quantity']);
  check.done();
  const rows = await insertRows(
    work,
    StockDrawEntity,
    picks.map(({ lot, quantity, reservationId }) => ({
      lotId: lot.lotId,
      quantity,
      reason: input.reason,
      drawnAt,
      taskId: wish.taskId,
      reservationId,
      fittingId: null,
      note,
    })),
  );
  return rows.map(({ id }) => id);
}
