import { rowSourceInWork } from '../../db/rowSource.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { standAnew } from './refreshStandings.js';

/** Rebuilds every computed standing from the records. @returns how many items there are. */
export async function recomputeAll(work: UnitOfWork): Promise<number> {
  const items = await rowSourceInWork(work).rows<{ id: string }>(
    'SELECT id AS "id" FROM item ORDER BY id',
  );
  await standAnew(
    work,
    items.map(({ id }) => id),
  );
  return items.length;
}
