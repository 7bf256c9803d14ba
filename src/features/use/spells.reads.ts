import { groupedBy } from '../../db/groupedBy.js';
import { listParameter } from '../../db/dialect.js';
import type { RowSource } from '../../db/rowSource.js';
import type { UseSpell } from '../../domain/use/useSpell.js';

/** The uses of many items, oldest first; none, no entry. */
export async function readSpells(
  { rows, dialect }: RowSource,
  itemIds: readonly string[],
): Promise<Map<string, (UseSpell & { contacts: number })[]>> {
  const found = await rows<{
    itemId: string;
    startedAt: string;
    minutes: number;
    contacts: number;
  }>(
    `SELECT item_id AS "itemId", started_at AS "startedAt", minutes AS "minutes",
       contacts AS "contacts"
     FROM on_air_use WHERE minutes > 0 AND ${dialect.isAnyOf('item_id')} ORDER BY started_at, id`,
    [listParameter(itemIds)],
  );
  const spells = found.map(({ startedAt, ...spell }) => ({
    ...spell,
    startedAtMs: Date.parse(startedAt),
  }));
  return groupedBy(spells, ({ itemId }) => itemId);
}
