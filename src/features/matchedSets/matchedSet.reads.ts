import { grouped } from '../../api/kit/relations.js';
import { selectColumns } from '../../api/kit/selectColumns.js';
import { tableReads } from '../../api/kit/tableReads.js';
import type { Relation, Row } from '../../api/kit/typeReads.js';
import { listParameter } from '../../db/dialect.js';
import { mismatch } from './mismatch.reads.js';

const columns = selectColumns('matched_set', [
  'id',
  'version',
  'name',
  'quantity',
  'tier',
  'largestMismatchPercent',
  'source',
  'note',
]);

const components: Relation = async (context, sets) => {
  const { reader } = context.database;
  const pairs = await reader.rows<Row & { parentId: string; componentId: string }>(
    `SELECT id AS "id", set_id AS "parentId", component_id AS "componentId"
     FROM matched_set_member WHERE ${reader.dialect.isAnyOf('set_id')} ORDER BY id`,
    [listParameter(sets.map(({ id }) => id))],
  );
  const ids = [...new Set(pairs.map(({ componentId }) => componentId))];
  const children = (await context.reads.get('Component')?.byIds(context, ids)) ?? [];
  const byId = new Map(children.map((row) => [row.id, row]));
  const values = grouped(sets, pairs).map((some) =>
    some.flatMap((pair) => byId.get(pair['componentId'] as string) ?? []),
  );
  return { values, children, childType: 'Component' };
};

export const matchedSetReads = tableReads('MatchedSet', 'matched_set', columns, {
  components,
  mismatch,
});

/** What matched sets add to a component. */
export const matchedSetRelationsOfComponent: Record<string, Relation> = {
  matchedSets: async ({ database: { reader } }, parents) => {
    const children = await reader.rows<Row>(
      `SELECT ${columns}, matched_set_member.component_id AS "parentId"
       FROM matched_set_member JOIN matched_set ON matched_set.id = matched_set_member.set_id
       WHERE ${reader.dialect.isAnyOf('matched_set_member.component_id')}
       ORDER BY matched_set.name, matched_set.id`,
      [listParameter(parents.map(({ id }) => id))],
    );
    return { values: grouped(parents, children), children, childType: 'MatchedSet' };
  },
};
