import type { RowSource } from '../../db/rowSource.js';

/** What the collection counts in; null while nobody has said so. */
export async function homeCurrency(query: RowSource['rows']): Promise<string | null> {
  const [collection] = await query<{ currency: string }>(
    'SELECT home_currency AS "currency" FROM collection',
  );
  return collection?.currency ?? null;
}
