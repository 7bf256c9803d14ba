import type { RowSource } from '../../db/rowSource.js';

/** The collection's IANA zone, in which its days begin and end. */
export async function zoneOfBench({ rows }: Pick<RowSource, 'rows'>): Promise<string> {
  const [collection] = await rows<{ zone: string }>(
    'SELECT zone AS "zone" FROM collection LIMIT 1',
  );
  return collection?.zone ?? 'UTC';
}
