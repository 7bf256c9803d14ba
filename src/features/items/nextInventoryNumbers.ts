import { oneAtATime } from '../../db/oneAtATime.js';
import { queryInWork } from '../../db/queryInWork.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import type { ItemKind } from './itemKind.js';

const prefixes: Record<ItemKind, string> = { RIG: 'R-', ACCESSORY: 'A-' };

/**
 * The next free numbers after the highest one in use: … Two people who ask at the same
 * time get different ones, since the second waits until the first has kept hers.
 * @param taken numbers given in the same act, not yet kept
 */
export async function nextInventoryNumbers(
  work: UnitOfWork,
  kind: ItemKind,
  count: number,
  taken: readonly string[] = [],
): Promise<string[]> {
  if (count === 0) return [];
  await oneAtATime(work, 'inventory numbers');
  const prefix = prefixes[kind];
  const [highest] = await queryInWork<{ number: number | string | null }>(
    work,
    `SELECT MAX(CAST(SUBSTR(inventory_number, 3) AS BIGINT)) AS "number" FROM item
     WHERE SUBSTR(inventory_number, 1, 2) = ? AND LENGTH(inventory_number) BETWEEN 3 AND 11
       AND LTRIM(SUBSTR(inventory_number, 3), '0123456789') = ''`,
    [prefix],
  );
  const given = taken.flatMap((text) =>
    text.startsWith(prefix) && /^\d{1,9}$/.test(text.slice(2)) ? [Number(text.slice(2))] : [],
  );
  const last = Math.max(Number(highest?.number ?? 0), ...given);
  return Array.from(
    { length: count },
    (_, index) => `${prefix}${String(last + 1 + index).padStart(3, '0')}`,
  );
}
