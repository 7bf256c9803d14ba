import { listParameter } from '../../db/dialect.js';
import type { RowSource } from '../../db/rowSource.js';
import { standingItemColumns, type StandingItem } from './standingItems.reads.js';

/** Housings within housings; a circle, which is refused, would end here. */
const deepestHousing = 20;

/**
 * Some items as they stood at an instant, with everything that they were housed in then. Housing and
 * retirement have no dates of their own that survive a change back, so the history is asked.
 */
export async function readItemsAsOf(
  source: RowSource,
  itemIds: readonly string[],
  at: string,
): Promise<StandingItem[]> {
  const found = new Map<string, StandingItem>();
  let wanted = [...new Set(itemIds)];
  for (let depth = 0; wanted.length > 0 && depth < deepestHousing; depth += 1) {
    for (const item of await itemsThen(source, wanted, at)) found.set(item.id, item);
    const housings = [...found.values()].flatMap(({ housedInId }) => housedInId ?? []);
    wanted = [...new Set(housings)].filter((id) => !found.has(id));
  }
  return [...found.values()];
}

interface ItemRow extends StandingItem {
  acquiredOn: string | null;
  wasAway: boolean | number;
}

async function itemsThen(
  { rows, dialect }: RowSource,
  ids: readonly string[],
  at: string,
): Promise<StandingItem[]> {
  const list = listParameter(ids);
  const day = at.slice(0, 10);
  const items = await rows<ItemRow>(
    `SELECT ${standingItemColumns}, acquisition.acquired_on AS "acquiredOn",
       (EXISTS (SELECT 1 FROM loan WHERE loan.item_id = item.id AND loan.direction = 'OUT'
          AND loan.lent_on <= ? AND (loan.returned_on IS NULL OR loan.returned_on > ?))
        OR EXISTS (SELECT 1 FROM item_loss WHERE item_loss.item_id = item.id
          AND item_loss.missed_on <= ? AND (item_loss.found_on IS NULL OR item_loss.found_on > ?)))
         AS "wasAway"
     FROM item
     LEFT JOIN model ON model.id = item.model_id
     LEFT JOIN lot_line ON lot_line.item_id = item.id
     LEFT JOIN acquisition ON acquisition.id = lot_line.acquisition_id
     WHERE ${dialect.isAnyOf('item.id')} ORDER BY item.id`,
    [day, day, day, day, list],
  );
  const later = await rows<{ recordId: string; before: string | null; after: string | null }>(
    `SELECT record_id AS "recordId", before AS "before", after AS "after" FROM change
     WHERE record_table = 'item' AND changed_at > ? AND ${dialect.isAnyOf('record_id')}
     ORDER BY changed_at DESC, id DESC`,
    [at, list],
  );
  // The last one put in is the first change after that instant: what it found is how things stood.
  const stood = new Map(later.map(({ recordId, before, after }) => [recordId, before ?? after]));
  return items.map(({ acquiredOn, wasAway, ...item }) => {
    const kept = stood.get(item.id);
    const then = kept ? (JSON.parse(kept) as Partial<StandingItem>) : {};
    return {
      ...item,
      housedInId: then.housedInId === undefined ? item.housedInId : then.housedInId,
      retiredAt: then.retiredAt === undefined ? item.retiredAt : then.retiredAt,
      isAway: wasAway,
      isYetToCome: acquiredOn !== null && acquiredOn > day,
    };
  });
}
