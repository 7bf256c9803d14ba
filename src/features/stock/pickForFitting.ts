import type { Checklist } from '../../db/checklist.js';
import { insertRow } from '../../db/insertRow.js';
import { oneAtATime } from '../../db/oneAtATime.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import type { StockPick } from './pickStock.js';
import { pickStock } from './pickStock.js';
import { readWish } from './readWish.js';
import { StockDrawEntity } from './stockDraw.entity.js';
import { stockGuard } from './stockGuard.js';

export interface TakenFromStock {
  pick: StockPick;
  taskId: string | null;
}

interface FromStock {
  partTypeId?: string | null;
  lotId?: string | null;
  taskId?: string | null;
}

/** One spare for a place in an item; what is wrong goes to the checklist. Nothing is written yet. */
export async function pickForFitting(
  work: UnitOfWork,
  check: Checklist,
  input: FromStock,
  path: string[],
): Promise<TakenFromStock | null> {
  await oneAtATime(work, stockGuard);
  const wish = await readWish(check, { ...input, quantity: 1 }, path);
  if (wish.lotId === null && wish.partTypeId === null) return null;
  const [pick] = await pickStock(work, check, wish, path);
  return pick ? { pick, taskId: wish.taskId } : null;
}

/** The spare leaves the shelf in the transaction that fits it. */
export async function drawForFitting(
  work: UnitOfWork,
  { pick, taskId }: TakenFromStock,
  fitting: { id: string; fittedAt: string },
): Promise<void> {
  await insertRow(work, StockDrawEntity, {
    lotId: pick.lot.lotId,
    quantity: 1,
    reason: 'FITTED',
    drawnAt: fitting.fittedAt,
    taskId,
    reservationId: pick.reservationId,
    fittingId: fitting.id,
    note: null,
  });
}
