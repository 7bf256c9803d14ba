import { listParameter } from '../../db/dialect.js';
import { groupedBy } from '../../db/groupedBy.js';
import type { RowSource } from '../../db/rowSource.js';
import type { CapacitorPlace } from '../../domain/parts/replacementOrder.js';
import { capacitorRatingsOf, type PartFacts } from '../substitution/partFacts.js';

interface PlaceRow {
  itemId: string;
  designator: string;
  ratings: string;
}

/** The capacitors of an item that can be ordered, and the places whose value nobody wrote down. */
export interface CapacitorPlaces {
  known: CapacitorPlace[];
  unknown: string[];
}

/**
 * The capacitors of many items by designator, in one statement: what the model's fit-out expects,
 * and what is fitted in places that the fit-out does not name.
 */
export async function readCapacitorPlaces(
  { rows, dialect }: RowSource,
  itemIds: readonly string[],
): Promise<Map<string, CapacitorPlaces>> {
  const ids = listParameter(itemIds);
  const found = await rows<PlaceRow>(
    `SELECT "itemId", "designator", "ratings" FROM (
       SELECT item.id AS "itemId", fit_out_position.designator AS "designator",
         part_type.ratings AS "ratings"
       FROM item JOIN fit_out_position ON fit_out_position.model_id = item.model_id
         JOIN part_type ON part_type.id = fit_out_position.part_type_id
       WHERE part_type.kind = 'CAPACITOR' AND ${dialect.isAnyOf('item.id')}
       UNION ALL
       SELECT fitting.item_id AS "itemId", fitting.designator AS "designator",
         part_type.ratings AS "ratings"
       FROM fitting JOIN component ON component.id = fitting.component_id
         JOIN part_type ON part_type.id = component.part_type_id
       WHERE part_type.kind = 'CAPACITOR' AND fitting.removed_at IS NULL
         AND ${dialect.isAnyOf('fitting.item_id')}
         AND NOT EXISTS (SELECT 1 FROM item placed
           JOIN fit_out_position named ON named.model_id = placed.model_id
           WHERE placed.id = fitting.item_id AND named.designator = fitting.designator
             AND named.part_type_id IS NOT NULL)
     ) AS places ORDER BY "itemId", natural_key("designator")`,
    [ids, ids],
  );
  const byItem = groupedBy(found, ({ itemId }) => itemId);
  return new Map(itemIds.map((id) => [id, placesOf(byItem.get(id) ?? [])]));
}

function placesOf(rows: readonly PlaceRow[]): CapacitorPlaces {
  const places: CapacitorPlaces = { known: [], unknown: [] };
  for (const { designator, ratings } of rows) {
    const rated = capacitorRatingsOf({ ratings: JSON.parse(ratings) as PartFacts['ratings'] });
    if (!rated) places.unknown.push(designator);
    else {
      // Twelve figures: a value in farads has lost nothing by then, and a double's tail is cut off.
      const microfarads = Number((rated.farads * 1e6).toPrecision(12));
      places.known.push({ designator, microfarads, workingVolts: rated.workingVolts });
    }
  }
  return places;
}
