import { z } from 'zod';
import { groupedBy } from '../../db/groupedBy.js';
import { listParameter } from '../../db/dialect.js';
import type { RowSource } from '../../db/rowSource.js';
import type { IndexPoint } from '../../domain/worth/indexedAmount.js';
import { readSeedFile } from '../reference/readSeedFile.js';
import { referenceFile, sourceNamed } from '../reference/referenceSources.js';

/** A price index with its points. */
export interface LoadedIndex {
  /** null: the table that the program comes with. */
  id: string | null;
  name: string;
  currency: string;
  source: string;
  points: readonly IndexPoint[];
}

const year = z.strictObject({
  period: z.string().regex(/^\d{4}$/),
  value: z.string().regex(/^\d+\.\d+$/),
});

/** Consumer prices of the United States, a public table; read once when the program starts. */
export const shippedIndex: LoadedIndex = {
  id: null,
  name: 'Consumer prices in the United States, all urban consumers, 1982-84 = 100, yearly means',
  currency: 'USD',
  source: sourceNamed('cpi-us').title,
  points: readSeedFile(referenceFile('consumer-prices-us.csv'), z.array(year)),
};

/** The index for each currency: the one loaded last, else the one that the program comes with. */
export async function readPriceIndexes(source: RowSource): Promise<Map<string, LoadedIndex>> {
  const loaded = await source.rows<Omit<LoadedIndex, 'points'> & { id: string }>(
    `SELECT id AS "id", name AS "name", currency AS "currency", source AS "source"
     FROM price_index WHERE struck_at IS NULL ORDER BY recorded_at, id`,
  );
  const points = await readIndexPoints(
    source,
    loaded.map(({ id }) => id),
  );
  const byCurrency = new Map([[shippedIndex.currency, shippedIndex]]);
  for (const index of loaded) {
    byCurrency.set(index.currency, { ...index, points: points.get(index.id) ?? [] });
  }
  return byCurrency;
}

async function readIndexPoints({ rows, dialect }: RowSource, ids: readonly string[]) {
  if (ids.length === 0) return new Map<string, (IndexPoint & { indexId: string })[]>();
  const found = await rows<IndexPoint & { indexId: string }>(
    `SELECT index_id AS "indexId", period AS "period", value AS "value"
     FROM price_index_point WHERE ${dialect.isAnyOf('index_id')} ORDER BY period`,
    [listParameter(ids)],
  );
  return groupedBy(found, ({ indexId }) => indexId);
}
