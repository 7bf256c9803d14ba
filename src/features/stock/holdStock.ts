import { queryInWork } from '../../db/queryInWork.js';
import { Refusal } from '../../db/refusal.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { readLotLevels } from './lotLevels.reads.js';

/**
 * After any change of stock: no lot has given more than came, nor put aside more than it has, and no
 * reservation has given more than it held. Ends the unit of work otherwise.
 */
export async function holdStock(work: UnitOfWork, lotId: string, path: string[]): Promise<void> {
  const [lot] = await readLotLevels(work, 'stock_lot.id = ?', [lotId]);
  if (!lot) throw Refusal.notFound('stock lot', path);
  if (lot.available < 0) {
    throw Refusal.conflict(
      `${lot.quantity} of ${lot.name} came in this lot; ${lot.drawn} have left it and ` +
        `${lot.reserved} are put aside for tasks, which is ${-lot.available} too many.`,
      path,
    );
  }
  const overdrawn = await queryInWork<{ held: number; used: number | string }>(
    work,
    `SELECT stock_reservation.quantity AS "held", SUM(stock_draw.quantity) AS "used"
     FROM stock_reservation JOIN stock_draw ON stock_draw.reservation_id = stock_reservation.id
     WHERE stock_reservation.lot_id = ? GROUP BY stock_reservation.id, stock_reservation.quantity
     HAVING SUM(stock_draw.quantity) > stock_reservation.quantity`,
    [lotId],
  );
  for (const { held, used } of overdrawn) {
    throw Refusal.conflict(
      `${Number(used)} were drawn from a reservation of ${held}: change it to no less.`,
      path,
    );
  }
}
