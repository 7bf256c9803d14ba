import type { Checklist } from '../../db/checklist.js';
import { queryInWork } from '../../db/queryInWork.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';

/** One make and type, one model. */
export async function refuseTakenModel(
  work: UnitOfWork,
  check: Checklist,
  model: { maker: string; designation: string; exceptId?: string },
): Promise<void> {
  const { maker, designation, exceptId } = model;
  const holders = await queryInWork<{ id: string }>(
    work,
    'SELECT id AS "id" FROM model WHERE maker = ? AND designation = ?',
    [maker, designation],
  );
  if (!holders.some((holder) => holder.id !== exceptId)) return;
  check.add({
    code: 'CONFLICT',
    message: `There is a model ${maker} ${designation} already. Change that one instead.`,
    path: ['designation'],
  });
}
