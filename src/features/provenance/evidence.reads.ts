import { list } from '../../api/kit/relations.js';
import { selectColumns } from '../../api/kit/selectColumns.js';
import { tableReads } from '../../api/kit/tableReads.js';
import type { Relation } from '../../api/kit/typeReads.js';
import { readConfidences } from './confidence.reads.js';

const columns = selectColumns('evidence', [
  'id',
  'version',
  'bearing',
  'kind',
  'strength',
  'description',
  'keptAt',
  'withdrawnAt',
  'withdrawnReason',
]);

export const evidenceReads = tableReads('Evidence', 'evidence', columns);

/** What bears on an event or a claim, and how far it can be relied on. */
export const evidenceRelationsOf = (
  parentColumn: 'event_id' | 'claim_id',
): Record<string, Relation> => ({
  evidenceFor: list('Evidence', {
    table: 'evidence',
    columns,
    parentColumn,
    orderBy: 'evidence.id',
  }),
  confidence: async ({ database: { reader } }, rows) => {
    const ids = rows.map(({ id }) => id);
    const found = await readConfidences(reader, parentColumn, ids);
    return { values: ids.map((id) => found.get(id) ?? null), children: [], childType: null };
  },
});
