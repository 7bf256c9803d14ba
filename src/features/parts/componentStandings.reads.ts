import { groupedBy } from '../../db/groupedBy.js';
import { listParameter } from '../../db/dialect.js';
import type { RowSource } from '../../db/rowSource.js';
import { componentState, type ComponentStanding } from '../../domain/condition/componentState.js';
import type { JudgedReading } from '../../domain/condition/judgedReading.js';
import { nameKey } from '../../domain/nameKey.js';
import { judgeReading } from '../readings/judgeReading.js';
import { readLimitsOfSubjects, type KeptLimit } from '../readings/limitsOfSubjects.reads.js';
import { readComparisons } from '../trends/instrumentComparison.reads.js';
import { subjectTrends, trendReadingColumns, type TrendReading } from '../trends/subjectTrends.js';

/** A component's state, with the readings that say so. */
export interface ComponentStandingFacts extends ComponentStanding {
  readonly readings: readonly JudgedReading[];
}

/**
 * How components stand by their readings, in four statements; every one asked for has an entry.
 * @param at only readings taken by then count; left out: all.
 */
export async function readComponentStandings(
  source: RowSource,
  componentIds: readonly string[],
  at?: string,
): Promise<Map<string, ComponentStandingFacts>> {
  const readings = await source.rows<ReadingRow>(
    `SELECT ${trendReadingColumns}, reading.component_id AS "componentId"
     FROM reading WHERE ${source.dialect.isAnyOf('reading.component_id')}${
       at === undefined ? '' : ' AND reading.taken_at <= ?'
     }`,
    [listParameter(componentIds), ...(at === undefined ? [] : [at])],
  );
  const measured = [...new Set(readings.map((reading) => reading.componentId))];
  const limits = await readLimitsOfSubjects(source, measured, []);
  const comparisons = await readComparisons(source);
  const byComponent = groupedBy(readings, (reading) => reading.componentId);
  return new Map(
    componentIds.map((id) => {
      const own = byComponent.get(id) ?? [];
      const held = limits.get(id) ?? [];
      const nearing = subjectTrends(own, held, comparisons)
        .filter(({ trend }) => trend.kind !== 'TOO_FEW' && trend.isLimitNear)
        .map(({ series }) => series.points.map(({ readingId }) => readingId));
      const all = own.map((reading) => judged(reading, held));
      const standing = componentState(all, nearing);
      const says = new Set(standing.readingIds);
      return [id, { ...standing, readings: all.filter(({ readingId }) => says.has(readingId)) }];
    }),
  );
}

interface ReadingRow extends TrendReading {
  componentId: string;
}

const judged = (reading: ReadingRow, limits: readonly KeptLimit[]): JudgedReading => ({
  readingId: reading.id,
  quantityCode: nameKey(reading.quantity),
  tier: reading.tier,
  verdict: judgeReading(reading, limits).word,
  takenAtMs: Date.parse(reading.takenAt),
});
