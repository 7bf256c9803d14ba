import type { Relation, TypeReads } from '../../api/kit/typeReads.js';
import { listParameter } from '../../db/dialect.js';
import { groupedBy } from '../../db/groupedBy.js';
import { readLimitsOfSubjects } from '../readings/limitsOfSubjects.reads.js';
import { readingsByIds } from '../readings/readingsByIds.js';
import { readComparisons } from './instrumentComparison.reads.js';
import { shownTrend } from './shownTrend.js';
import { subjectTrends, trendReadingColumns, type TrendReading } from './subjectTrends.js';

const trendsOf =
  (column: 'component_id' | 'item_id'): Relation =>
  async ({ database: { reader }, nowMs }, subjects) => {
    const ids = subjects.map(({ id }) => id);
    const readings = await reader.rows<TrendReading & { subjectId: string }>(
      `SELECT ${trendReadingColumns}, reading.${column} AS "subjectId"
       FROM reading WHERE ${reader.dialect.isAnyOf(`reading.${column}`)}`,
      [listParameter(ids)],
    );
    const [componentIds, itemIds] = column === 'component_id' ? [ids, []] : [[], ids];
    const limits = await readLimitsOfSubjects(reader, componentIds, itemIds);
    const comparisons = await readComparisons(reader);
    const bySubject = groupedBy(readings, ({ subjectId }) => subjectId);
    const values = ids.map((id) =>
      subjectTrends(bySubject.get(id) ?? [], limits.get(id) ?? [], comparisons).map((trend) =>
        shownTrend(id, trend, nowMs),
      ),
    );
    return { values, children: values.flat(), childType: 'Trend' };
  };

export const trendRelationsOfComponent = { trends: trendsOf('component_id') };
export const trendRelationsOfItem = { trends: trendsOf('item_id') };

/** Computed for a component or an item and never asked for by an id of its own. */
export const trendReads: TypeReads = {
  typeName: 'Trend',
  byIds: () => Promise.resolve([]),
  relations: { readings: readingsByIds },
};
