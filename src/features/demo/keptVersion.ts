import { splitGlobalId } from '../../api/kit/globalId.js';
import { queryInWork } from '../../db/queryInWork.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';

/** The version of a record at this point of the story. */
export async function keptVersion(
  work: UnitOfWork,
  table: string,
  globalId: string,
): Promise<number> {
  const id = splitGlobalId(globalId)?.id ?? '';
  const [row] = await queryInWork<{ version: number }>(
    work,
    `SELECT version AS "version" FROM ${table} WHERE id = ?`,
    [id],
  );
  if (!row) throw new Error(`There is no ${table} with the id ${globalId}.`);
  return row.version;
}
