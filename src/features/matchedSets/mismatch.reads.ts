import type { Relation } from '../../api/kit/typeReads.js';
import { listParameter } from '../../db/dialect.js';
import { groupedBy } from '../../db/groupedBy.js';
import { setMismatch, type MemberReading } from '../../domain/condition/setMismatch.js';
import { nameKey } from '../../domain/nameKey.js';
import type { ReadingTier } from '../readings/readingTier.js';
import { convertUnit } from '../readings/ucum.js';

interface MemberRow {
  setId: string;
  componentId: string;
  quantity: string | null;
  value: string;
  unit: string;
  tier: ReadingTier;
  instrument: string | null;
  takenAt: string;
}

/**
 * Compared are the latest readings of the set's quantity on its tier, by the instrument of the very
 * latest of them: a tester that reads high reads high for one member only if it read only that one.
 */
export const mismatch: Relation = async ({ database: { reader }, nowMs }, sets) => {
  const rows = await reader.rows<MemberRow>(
    `SELECT matched_set_member.set_id AS "setId",
       matched_set_member.component_id AS "componentId", reading.quantity AS "quantity",
       reading.value AS "value", reading.unit AS "unit", reading.tier AS "tier",
       reading.instrument AS "instrument", reading.taken_at AS "takenAt"
     FROM matched_set_member
     LEFT JOIN reading ON reading.component_id = matched_set_member.component_id
     WHERE ${reader.dialect.isAnyOf('matched_set_member.set_id')}
     ORDER BY reading.taken_at, reading.id`,
    [listParameter(sets.map(({ id }) => id))],
  );
  const bySet = groupedBy(rows, ({ setId }) => setId);
  const values = sets.map((set) => {
    const own = bySet.get(set.id) ?? [];
    const memberCount = new Set(own.map(({ componentId }) => componentId)).size;
    const { readings, instrument } = latestAlike(own, set['quantity'], set['tier']);
    const found = setMismatch(memberCount, readings, Number(set['largestMismatchPercent']));
    const method =
      'Highest less lowest of the latest readings of this quantity on this tier by one instrument ' +
      `(${instrument ?? 'not recorded'}), in per cent of their mean. Limit: ` +
      `${String(set['largestMismatchPercent'])} %. Common practice, no source.`;
    const counted = [
      { what: 'members', count: memberCount },
      { what: 'members with such a reading', count: readings.length },
    ];
    const asOf = new Date(nowMs).toISOString();
    return { ...found, basis: { method, counted, assumptions: [], asOf } };
  });
  return { values, children: [], childType: null };
};

function latestAlike(
  rows: readonly MemberRow[],
  quantity: unknown,
  tier: unknown,
): { readings: MemberReading[]; instrument: string | null } {
  const alike = rows.filter(
    (row) =>
      row.quantity !== null &&
      row.tier === tier &&
      nameKey(row.quantity) === nameKey(String(quantity)),
  );
  const last = alike.at(-1);
  if (!last) return { readings: [], instrument: null };
  const latest = new Map<string, number>();
  for (const row of alike) {
    const value = convertUnit(row.value, row.unit, last.unit);
    if (value === null || nameKey(row.instrument ?? '') !== nameKey(last.instrument ?? '')) {
      continue;
    }
    latest.set(row.componentId, Number(value));
  }
  const readings = [...latest].map(([memberId, value]) => ({ memberId, value }));
  return { readings, instrument: last.instrument };
}
