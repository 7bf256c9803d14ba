import { one } from '../../api/kit/relations.js';
import { selectColumns } from '../../api/kit/selectColumns.js';
import { tableReads } from '../../api/kit/tableReads.js';
import type { Relation, Row, TypeReads } from '../../api/kit/typeReads.js';
import { readingsByIds } from '../readings/readingsByIds.js';
import type { SweptRow } from './sweep.entity.js';

const columns = selectColumns('sweep', [
  'id',
  'key',
  'itemId',
  'templateId',
  'recordedAt',
  'plannedDesignators',
  'rows',
]);
const table = tableReads('Sweep', 'sweep', columns);

/** Kept as JSON text: nothing is read for it. */
const rows: Relation = (_context, sweeps) => {
  const values = sweeps.map(({ id, swept }) =>
    (swept as SweptRow[]).map((row, index): Row => ({ id: `${id} ${index}`, ...row })),
  );
  return Promise.resolve({ values, children: values.flat(), childType: 'SweepRow' });
};

export const sweepReads: TypeReads = {
  ...table,
  byIds: async (context, ids) => {
    const found = await table.byIds(context, ids);
    return found.map(({ rows: text, plannedDesignators, ...sweep }) => {
      const swept = JSON.parse(String(text)) as SweptRow[];
      const planned =
        typeof plannedDesignators === 'string' ? (JSON.parse(plannedDesignators) as string[]) : [];
      const read = new Set(
        swept.flatMap(({ designator, readingIds }) => (readingIds.length > 0 ? designator : [])),
      );
      const positionsLeft = planned.filter((designator) => !read.has(designator));
      const readingCount = swept.reduce((sum, row) => sum + row.readingIds.length, 0);
      const refusedRowCount = swept.filter(({ problems }) => problems.length > 0).length;
      return { ...sweep, swept, readingCount, refusedRowCount, positionsLeft };
    });
  },
  relations: { item: one('Item', 'itemId'), template: one('SweepTemplate', 'templateId'), rows },
};

export const sweepRowReads: TypeReads = {
  typeName: 'SweepRow',
  byIds: () => Promise.resolve([]),
  relations: { component: one('Component', 'componentId'), readings: readingsByIds },
};
