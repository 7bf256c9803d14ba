import { changeRow } from '../../db/changeRow.js';
import { insertRow } from '../../db/insertRow.js';
import { oneAtATime } from '../../db/oneAtATime.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { readLotLevels } from './lotLevels.reads.js';
import { releaseReservations } from './releaseReservations.js';
import { StockDrawEntity } from './stockDraw.entity.js';
import { stockGuard } from './stockGuard.js';
import { StockLotEntity } from './stockLot.entity.js';

/**
 * A component that may lie on the shelf no longer does: it was fitted, or it turns out that it went
 * elsewhere. Whoever had put it aside for a task has it no longer.
 * @param fitting where it went; null when it never came to the shelf.
 */
export async function takeOffShelf(
  work: UnitOfWork,
  componentId: string,
  fitting: { id: string; fittedAt: string } | null,
): Promise<void> {
  await oneAtATime(work, stockGuard);
  const lots = await readLotLevels(work, 'stock_lot.component_id = ?', [componentId]);
  for (const { lotId, quantity, drawn } of lots) {
    if (quantity <= drawn) continue;
    await releaseReservations(work, { lotId });
    if (fitting === null) {
      await changeRow(work, StockLotEntity, lotId, null, { quantity: drawn });
    } else {
      await insertRow(work, StockDrawEntity, {
        lotId,
        quantity: 1,
        reason: 'FITTED',
        drawnAt: fitting.fittedAt,
        taskId: null,
        reservationId: null,
        fittingId: fitting.id,
        note: null,
      });
    }
  }
}
