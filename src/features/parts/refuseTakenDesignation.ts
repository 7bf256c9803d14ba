import type { Checklist } from '../../db/checklist.js';
import { queryInWork } from '../../db/queryInWork.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import type { PartKind } from './partKind.js';

/** One name, one kind of part. */
export async function refuseTakenDesignation(
  work: UnitOfWork,
  check: Checklist,
  { kind, designation, exceptId }: { kind: PartKind; designation: string; exceptId?: string },
): Promise<void> {
  const holders = await queryInWork<{ id: string }>(
    work,
    'SELECT id AS "id" FROM part_type WHERE kind = ? AND designation = ?',
    [kind, designation],
  );
  if (!holders.some((holder) => holder.id !== exceptId)) return;
  check.add({
    code: 'CONFLICT',
    message: `There is a part type ${designation} of this kind already. Change that one instead.`,
    path: ['designation'],
  });
}
