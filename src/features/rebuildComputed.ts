import { setImmediate } from 'node:timers/promises';
import { queryInWork } from '../db/queryInWork.js';
import type { UnitOfWork } from '../db/unitOfWork.js';
import { refreshItemText } from './search/refreshItemText.js';
import { standAnew } from './standing/refreshStandings.js';

const itemsAtOnce = 200;

/**
 * Computes anew, from the records alone, everything that is computed of every item: the text it is
 * found by and how it stands.
 * @returns how many items there are
 */
export async function rebuildComputed(work: UnitOfWork): Promise<number> {
  let count = 0;
  for (let last = ''; ;) {
    const items = await queryInWork<{ id: string }>(
      work,
      'SELECT id AS "id" FROM item WHERE id > ? ORDER BY id LIMIT ?',
      [last, itemsAtOnce],
    );
    const lastItem = items.at(-1);
    if (lastItem === undefined) return count;
    last = lastItem.id;
    count += items.length;
    const touched = items.map((item) => ({
      table: 'item',
      recordId: item.id,
      before: null,
      after: item,
    }));
    await refreshItemText({ ...work, writes: touched });
    await standAnew(
      work,
      items.map(({ id }) => id),
    );
    await setImmediate();
  }
}
