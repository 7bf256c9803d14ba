import { listParameter } from '../../db/dialect.js';
import type { RowSource } from '../../db/rowSource.js';
import { standingItemColumns, type StandingItem } from './standingItems.reads.js';

/** Housings within housings; a circle, which is refused, would end here. */
const deepestHousing = 20;

/**
 * Some items as they stood at an instant, with everything that they were housed in then. Housing,
 * retirement, the model that it was taken for and a serial number have no dates of their own that
 * survive a change, so the history is asked.
 */
export async function readItemsAsOf(
  source: RowSource,
  itemIds: readonly string[],
  at: string,
): Promise<ItemThen[]> {
  const found = new Map<string, ItemThen>();
  let wanted = [...new Set(itemIds)];
  for (let depth = 0; wanted.length > 0 && depth < deepestHousing; depth += 1) {
    for (const item of await itemsThen(source, wanted, at)) found.set(item.id, item);
    const housings = [...found.values()].flatMap(({ housedInId }) => housedInId ?? []);
    wanted = [...new Set(housings)].filter((id) => !found.has(id));
  }
  return [...found.values()];
}

export interface ItemThen extends StandingItem {
  /** The model that it was taken for then, or null for none; left out where it is that of now. */
  modelIdThen?: string | null;
}

interface ItemRow extends StandingItem {
  acquiredOn: string | null;
  wasAway: boolean | number;
  modelId: string | null;
}

type KeptItem = StandingItem & { modelId: string | null };

async function itemsThen(
  { rows, dialect }: RowSource,
  ids: readonly string[],
  at: string,
): Promise<ItemThen[]> {
  const list = listParameter(ids);
  const day = at.slice(0, 10);
  const items = await rows<ItemRow>(
    `SELECT ${standingItemColumns}, item.model_id AS "modelId",
       acquisition.acquired_on AS "acquiredOn",
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
  return items.map(({ acquiredOn, wasAway, modelId, ...item }) => {
    const kept = stood.get(item.id);
    const then = kept ? (JSON.parse(kept) as Partial<KeptItem>) : {};
    return {
      ...item,
      ...(then.modelId !== undefined && then.modelId !== modelId && { modelIdThen: then.modelId }),
      serialNumber: then.serialNumber === undefined ? item.serialNumber : then.serialNumber,
      housedInId: then.housedInId === undefined ? item.housedInId : then.housedInId,
      retiredAt: then.retiredAt === undefined ? item.retiredAt : then.retiredAt,
      isAway: wasAway,
      isYetToCome: acquiredOn !== null && acquiredOn > day,
    };
  });
}
