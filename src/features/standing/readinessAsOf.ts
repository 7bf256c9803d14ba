import type { RowSource } from '../../db/rowSource.js';
import type { ReadinessFacts } from '../../domain/readiness/readinessFacts.js';
import { readItemsAsOf } from './itemsAsOf.reads.js';
import { positionsOf, readinessFactsOf } from './readinessFactsOf.js';
import { takeModelsThen } from './modelsThen.reads.js';
import { recordsAround } from './readinessRecords.js';
import { readServices } from './standingItems.reads.js';

/**
 * What the readiness of some items rests on at an instant, now or past: every fact at its own date
 * (seen, settled, raised, cleared, fitted, removed, read, checked, served), the rest by the history
 * (`readItemsAsOf`). A fixed number of statements, however many items.
 */
export async function readReadinessAsOf(
  source: RowSource,
  itemIds: readonly string[],
  atMs: number,
): Promise<Map<string, ReadinessFacts>> {
  const at = new Date(atMs).toISOString();
  const services = await readServices(source, itemIds, at);
  const near = [...itemIds, ...services.map(({ accessoryId }) => accessoryId)];
  const items = await readItemsAsOf(source, near, at);
  const records = await recordsAround(source, { itemIds, items, services }, at);
  await takeModelsThen(source, items, records);
  return new Map(
    itemIds.flatMap((id) => {
      const item = records.items.get(id);
      if (!item) return [];
      return [[id, readinessFactsOf(item, positionsOf(id, records, atMs), records, atMs)]];
    }),
  );
}
