import { listParameter, type Dialect } from '../../db/dialect.js';
import type { RowSource } from '../../db/rowSource.js';

/** Those of some inventory numbers that the collection has already. */
export async function knownNumbers(
  query: RowSource['rows'],
  dialect: Dialect,
  numbers: readonly string[],
): Promise<Set<string>> {
  const rows = await query<{ number: string }>(
    `SELECT inventory_number AS "number" FROM item WHERE ${dialect.isAnyOf('inventory_number')}`,
    [listParameter(numbers)],
  );
  return new Set(rows.map(({ number }) => number));
}
