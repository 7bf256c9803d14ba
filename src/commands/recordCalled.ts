import { globalId, splitGlobalId } from '../api/kit/globalId.js';
import type { Database } from '../db/database.js';
import { CommandFailure } from './commandFailure.js';

/** The id of a record that is named by its id, or of an item by its inventory number. */
export async function recordCalled({ reader }: Database, called: string): Promise<string> {
  if (splitGlobalId(called)) return called;
  const [item] = await reader.rows<{ id: string; kind: string }>(
    'SELECT id AS "id", kind AS "kind" FROM item WHERE inventory_number = ?',
    [called.trim()],
  );
  if (item) return globalId(item.kind === 'RIG' ? 'Rig' : 'Accessory', item.id);
  throw new CommandFailure(
    `There is no item with the inventory number ${called}. Check the number.`,
  );
}
