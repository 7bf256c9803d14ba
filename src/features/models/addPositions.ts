import { insertRows } from '../../db/insertRow.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import type { Position } from './checkPositions.js';
import { FitOutPositionEntity } from './fitOutPosition.entity.js';

/** @param firstOrdinal where the new positions begin in the order of checking off. */
export async function addPositions(
  work: UnitOfWork,
  modelId: string,
  positions: readonly Position[],
  firstOrdinal: number,
): Promise<void> {
  const rows = positions.map((position, index) => ({
    ...position,
    modelId,
    ordinal: firstOrdinal + index,
  }));
  await insertRows(work, FitOutPositionEntity, rows);
}
