import { recordId } from '../../api/kit/globalId.js';
import type { RemovalInput } from '../../api/kit/removal.inputs.js';
import { removeRow } from '../../db/removeRow.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { versionedRow } from '../../db/versionedRow.js';
import { LimitEntity } from './limit.entity.js';

/** Verdicts are computed, so nothing rests on a limit but what is computed anew. */
export async function removeLimit(work: UnitOfWork, input: RemovalInput): Promise<void> {
  const id = recordId('Limit', input.id);
  await versionedRow(work, LimitEntity, id, input.version);
  await removeRow(work, LimitEntity, id);
}
