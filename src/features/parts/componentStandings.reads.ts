import { groupedBy } from '../../db/groupedBy.js';
import { listParameter } from '../../db/dialect.js';
import type { RowSource } from '../../db/rowSource.js';
import { componentState, type ComponentStanding } from '../../domain/condition/componentState.js';
import type { JudgedReading } from '../../domain/condition/judgedReading.js';
import { nameKey } from '../../domain/nameKey.js';
import { judgeReading, type JudgeableReading } from '../readings/judgeReading.js';
import { readLimitsOfSubjects, type KeptLimit } from '../readings/limitsOfSubjects.reads.js';

/** A component's state, with the readings that say so. */
export interface ComponentStandingFacts extends ComponentStanding {
  readonly readings: readonly JudgedReading[];
}

/**
 * How components stand by their readings, in three statements; every one asked for has an entry.
 * @param at only readings taken by then count; left out: all.
 */
export async function readComponentStandings(
  source: RowSource,
  componentIds: readonly string[],
  at?: string,
): Promise<Map<string, ComponentStandingFacts>> {
  const readings = await source.rows<ReadingRow>(
    `SELECT reading.id AS "id", reading.component_id AS "componentId",
       reading.quantity AS "quantity", reading.value AS "value", reading.unit AS "unit",
       reading.tier AS "tier", reading.taken_at AS "takenAt"
     FROM reading WHERE ${source.dialect.isAnyOf('reading.component_id')}${
       at === undefined ? '' : ' AND reading.taken_at <= ?'
     }`,
    [listParameter(componentIds), ...(at === undefined ? [] : [at])],
  );
  const measured = [...new Set(readings.map((reading) => reading.componentId))];
  const limits = await readLimitsOfSubjects(source, measured, []);
  const byComponent = groupedBy(readings, (reading) => reading.componentId);
  return new Map(
    componentIds.map((id) => {
      const own = byComponent.get(id) ?? [];
      const all = own.map((reading) => judged(reading, limits.get(id) ?? []));
      const standing = componentState(all);
      const says = new Set(standing.readingIds);
      return [id, { ...standing, readings: all.filter(({ readingId }) => says.has(readingId)) }];
    }),
  );
}

interface ReadingRow extends JudgeableReading {
  id: string;
  componentId: string;
  takenAt: string;
}

const judged = (reading: ReadingRow, limits: readonly KeptLimit[]): JudgedReading => ({
  readingId: reading.id,
  quantityCode: nameKey(reading.quantity),
  tier: reading.tier,
  verdict: judgeReading(reading, limits).word,
  takenAtMs: Date.parse(reading.takenAt),
});
