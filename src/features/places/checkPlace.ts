import type { Checklist } from '../../db/checklist.js';
import { queryInWork } from '../../db/queryInWork.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';

/** A place where something is to stand: there, and in use. */
export async function checkPlace(
  work: UnitOfWork,
  check: Checklist,
  placeId: string | null,
): Promise<void> {
  if (placeId === null) return;
  await check.exists('place', placeId, ['placeId']);
  const gone = await queryInWork<{ name: string }>(
    work,
    'SELECT name AS "name" FROM place WHERE id = ? AND retired_at IS NOT NULL',
    [placeId],
  );
  for (const { name } of gone) {
    check.refuse(`${name} is out of use. Choose another place, or take it back into use.`, [
      'placeId',
    ]);
  }
}
