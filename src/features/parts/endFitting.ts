import { changeRow } from '../../db/changeRow.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { shelveComponent } from '../stock/shelveComponent.js';
import type { Disposition } from './disposition.js';
import { FittingEntity } from './fitting.entity.js';

/** The component comes out. What was noted when it went in stays, in front. */
export async function endFitting(
  work: UnitOfWork,
  fitting: FittingEntity,
  end: { removedAt: string; disposition: Disposition; note: string | null },
): Promise<void> {
  const notes = [fitting.note, end.note].filter((note) => note !== null);
  await changeRow(work, FittingEntity, fitting.id, null, {
    removedAt: end.removedAt,
    disposition: end.disposition,
    note: notes.length === 0 ? null : notes.join('\n'),
  });
  if (end.disposition === 'STOCK') {
    await shelveComponent(work, fitting.componentId, end.removedAt);
  }
}
