import type { Checklist } from '../../db/checklist.js';
import { listParameter } from '../../db/dialect.js';
import type { RowSource } from '../../db/rowSource.js';

interface Known {
  id: string;
  number: string;
  lotId: string | null;
  acquiredOn: string | null;
  venue: string | null;
}

/**
 * Known items of lines are there, and have come in no lot yet: an item comes in once.
 * @param itemIds one a line; null where the line is something else
 */
export async function checkLotItems(
  { rows, dialect }: RowSource,
  check: Checklist,
  itemIds: readonly (string | null)[],
  pathOf: (line: number) => string[],
): Promise<void> {
  const wanted = itemIds.filter((id) => id !== null);
  if (wanted.length === 0) return;
  const found = await rows<Known>(
    `SELECT item.id AS "id", item.inventory_number AS "number", acquisition.id AS "lotId",
       acquisition.acquired_on AS "acquiredOn", acquisition.venue AS "venue"
     FROM item LEFT JOIN lot_line ON lot_line.item_id = item.id
     LEFT JOIN acquisition ON acquisition.id = lot_line.acquisition_id
     WHERE ${dialect.isAnyOf('item.id')}`,
    [listParameter(wanted)],
  );
  const items = new Map(found.map((item) => [item.id, item]));
  const seen = new Map<string, number>();
  itemIds.forEach((id, index) => {
    if (id === null) return;
    const path = [...pathOf(index), 'itemId'];
    const item = items.get(id);
    const earlier = seen.get(id);
    if (!item) {
      check.add({ code: 'NOT_FOUND', message: 'There is no item with this id.', path });
    } else if (item.lotId !== null) {
      const lot = `the lot of ${item.acquiredOn ?? ''}${item.venue === null ? '' : ` (${item.venue})`}`;
      const message = `${item.number} came in with ${lot} already; an item comes in once.`;
      check.add({ code: 'CONFLICT', message, path });
    } else if (earlier !== undefined) {
      check.refuse(`${item.number} is on line ${earlier + 1} already.`, path);
    }
    if (earlier === undefined) seen.set(id, index);
  });
}
