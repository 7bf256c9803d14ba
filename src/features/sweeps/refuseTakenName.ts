import type { Checklist } from '../../db/checklist.js';
import { oneAtATime } from '../../db/oneAtATime.js';
import { queryInWork } from '../../db/queryInWork.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { nameKey } from '../../domain/nameKey.js';

interface Named {
  modelId: string;
  name: string;
  exceptId?: string;
}

/** A model has one template of a name, retired ones included. */
export async function refuseTakenName(
  work: UnitOfWork,
  check: Checklist,
  { modelId, name, exceptId }: Named,
): Promise<void> {
  await oneAtATime(work, `sweep templates of ${modelId}`);
  const holders = await queryInWork<{ id: string; name: string; retiredAt: string | null }>(
    work,
    `SELECT id AS "id", name AS "name", retired_at AS "retiredAt"
     FROM sweep_template WHERE model_id = ? AND name_key = ?`,
    [modelId, nameKey(name)],
  );
  const holder = holders.find(({ id }) => id !== exceptId);
  if (!holder) return;
  const standing = holder.retiredAt === null ? 'already' : 'among the retired ones';
  check.add({
    code: 'CONFLICT',
    message: `The model has a sweep template “${holder.name}” ${standing}. Change that one, or choose another name.`,
    path: ['name'],
  });
}
