import type { Checklist } from '../../db/checklist.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { pickFromLots } from '../../domain/stock/pickFromLots.js';
import { readLotLevels, readOpenReservations, type LotLevel } from './lotLevels.reads.js';

/** What is wanted: a lot by its id, or a part type from whatever lots hold it. */
export interface StockWish {
  lotId: string | null;
  partTypeId: string | null;
  /** Whose reservations are used first; null: only what nobody has put aside. */
  taskId: string | null;
  quantity: number;
}

export interface StockPick {
  lot: LotLevel;
  quantity: number;
  /** Null: from what nobody had put aside. */
  reservationId: string | null;
}

/**
 * Units for a task or for anybody, the task's own reservations first, then the oldest lots. By part
 * type nothing that is for repair is picked; by lot it may be. Hold `stockGuard` when calling it.
 */
export async function pickStock(
  work: UnitOfWork,
  check: Checklist,
  wish: StockWish,
  path: string[],
): Promise<StockPick[]> {
  const { lotId, partTypeId, taskId, quantity } = wish;
  const lots =
    lotId !== null
      ? await readLotLevels(work, 'stock_lot.id = ?', [lotId])
      : await readLotLevels(
          work,
          "stock_lot.part_type_id = ? AND stock_lot.condition <> 'FOR_REPAIR'",
          [partTypeId],
        );
  const byId = new Map(lots.map((lot) => [lot.lotId, lot]));
  const reserved = taskId === null ? [] : await readOpenReservations(work, taskId);
  const own = reserved.filter((reservation) => byId.has(reservation.lotId));
  const fromOwn = pickFromLots(
    own.map(({ reservationId, open }) => ({ lotId: reservationId, available: open })),
    quantity,
  );
  const fromFree = pickFromLots(lots, fromOwn.missing);
  if (fromFree.missing > 0) {
    const sum = (count: (lot: LotLevel) => number): number =>
      lots.reduce((total, lot) => total + count(lot), 0);
    const name = lots[0]?.name ?? 'this part';
    check.add({
      code: 'CONFLICT',
      message:
        `${quantity} of ${name} are wanted and ${quantity - fromFree.missing} can be had: ` +
        `${sum((lot) => lot.quantity - lot.drawn)} lie on the shelf, ` +
        `${sum((lot) => lot.reserved)} of them put aside for tasks.`,
      path,
    });
  }
  const lotOf = new Map(own.map((reservation) => [reservation.reservationId, reservation.lotId]));
  const picked = [
    ...fromOwn.picks.map((pick) => ({
      lotId: lotOf.get(pick.lotId) ?? '',
      quantity: pick.quantity,
      reservationId: pick.lotId,
    })),
    ...fromFree.picks.map((pick) => ({ ...pick, reservationId: null })),
  ];
  return picked.flatMap(({ lotId: id, ...pick }) => {
    const lot = byId.get(id);
    return lot ? [{ ...pick, lot }] : [];
  });
}
