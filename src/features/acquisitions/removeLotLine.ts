import { recordId } from '../../api/kit/globalId.js';
import type { RemovalInput } from '../../api/kit/removal.inputs.js';
import { Checklist } from '../../db/checklist.js';
import { oneAtATime } from '../../db/oneAtATime.js';
import { queryInWork } from '../../db/queryInWork.js';
import { Refusal } from '../../db/refusal.js';
import { removeRow } from '../../db/removeRow.js';
import { rowSourceInWork } from '../../db/rowSource.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { versionedRow } from '../../db/versionedRow.js';
import { checkSpread } from './checkSpread.js';
import { LotLineEntity } from './lotLine.entity.js';
import { readLots } from './lots.reads.js';

/**
 * It never was in the lot: what it would have cost falls to the other lines. Its item stays in the
 * collection, as come in without a lot; the history keeps the line.
 */
export async function removeLotLine(work: UnitOfWork, input: RemovalInput): Promise<void> {
  const id = recordId('LotLine', input.id);
  const known = await work.manager.findOneBy(LotLineEntity, { id });
  if (!known) throw Refusal.notFound('lot line');
  await oneAtATime(work, `lot ${known.acquisitionId}`);
  const line = await versionedRow(work, LotLineEntity, id, input.version);
  await refuseSpares(work, id);
  const [lot] = await readLots(rowSourceInWork(work), 'lot', [line.acquisitionId]);
  if (!lot) throw Refusal.notFound('acquisition');
  const lines = lot.lines.filter((one) => one.id !== id);
  const check = new Checklist(work);
  check.that(
    lines.length > 0,
    'It is the only thing in this lot. Say what was in it instead: change the line, or add another first.',
    ['id'],
  );
  if (lines.length > 0) checkSpread(check, { ...lot, lines }, () => ['id']);
  check.done();
  await removeRow(work, LotLineEntity, id);
}

/** Spares on the shelf that came with it would cost nothing any more, and nobody would see why. */
async function refuseSpares(work: UnitOfWork, lotLineId: string): Promise<void> {
  const [spares] = await queryInWork<{ quantity: number; name: string | null }>(
    work,
    `SELECT stock_lot.quantity AS "quantity",
       COALESCE(part_type.designation, stock_lot.description) AS "name"
     FROM stock_lot LEFT JOIN part_type ON part_type.id = stock_lot.part_type_id
     WHERE stock_lot.lot_line_id = ? ORDER BY stock_lot.id LIMIT 1`,
    [lotLineId],
  );
  if (!spares) return;
  throw Refusal.conflict(
    `Spares on the shelf came with it: ${spares.quantity} × ${spares.name ?? 'unnamed'}. Change the line instead.`,
    ['id'],
  );
}
