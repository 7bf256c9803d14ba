import { groupedBy } from '../../db/groupedBy.js';
import { listParameter } from '../../db/dialect.js';
import type { Relation } from '../../api/kit/typeReads.js';
import { minutesWithin } from '../../domain/use/minutesWithin.js';
import { hundredths } from '../standing/standingFacts.js';
import { readSpells } from './spells.reads.js';

/** Hours on the air of each component, in whatever it sat at the time. */
export const useHours: Relation = async ({ database: { reader }, nowMs }, components) => {
  const fittings = await reader.rows<{
    componentId: string;
    itemId: string;
    fittedAt: string;
    removedAt: string | null;
  }>(
    `SELECT component_id AS "componentId", item_id AS "itemId", fitted_at AS "fittedAt",
       removed_at AS "removedAt"
     FROM fitting WHERE ${reader.dialect.isAnyOf('component_id')}`,
    [listParameter(components.map(({ id }) => id))],
  );
  const spells = await readSpells(reader, [...new Set(fittings.map(({ itemId }) => itemId))]);
  const byComponent = groupedBy(fittings, ({ componentId }) => componentId);
  const values = components.map(({ id }) => {
    const minutes = (byComponent.get(id) ?? []).reduce((sum, { itemId, fittedAt, removedAt }) => {
      const untilMs = removedAt === null ? nowMs : Date.parse(removedAt);
      return sum + minutesWithin(spells.get(itemId) ?? [], Date.parse(fittedAt), untilMs);
    }, 0);
    return hundredths(minutes / 60);
  });
  return { values, children: [], childType: null };
};
