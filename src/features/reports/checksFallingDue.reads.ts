import type { Reader } from '../../db/reader.js';
import { finalCheckStanding } from '../../domain/readiness/finalCheckStanding.js';
import { shownItem } from '../items/shownItem.js';
import { readFinalChecks } from '../readiness/finalCheckFacts.reads.js';

export interface CheckFallingDue {
  itemId: string;
  itemName: string;
  procedureCode: string;
  procedure: string;
  lapsesAtMs: number;
}

/** The latest passed check of each procedure on what is in the collection, soonest first. */
export async function readChecksFallingDue(reader: Reader): Promise<CheckFallingDue[]> {
  const items = await reader.rows<{ id: string; inventoryNumber: string; name: string | null }>(
    `SELECT id AS "id", inventory_number AS "inventoryNumber", name AS "name" FROM item
     WHERE retired_at IS NULL AND EXISTS (SELECT 1 FROM final_check WHERE item_id = item.id)`,
  );
  const checks = await readFinalChecks(
    reader,
    items.map(({ id }) => id),
  );
  return items
    .flatMap((item) => {
      const known = checks.get(item.id);
      if (!known) return [];
      const { lapses } = finalCheckStanding(item.id, known.procedures, known.finalChecks);
      return lapses.map(({ procedureCode, name, lapsesAtMs }) => ({
        itemId: item.id,
        itemName: shownItem(item),
        procedureCode,
        procedure: name,
        lapsesAtMs,
      }));
    })
    .sort((left, right) => left.lapsesAtMs - right.lapsesAtMs);
}
