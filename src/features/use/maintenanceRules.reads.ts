import { listParameter } from '../../db/dialect.js';
import type { RowSource } from '../../db/rowSource.js';
import type { Row } from '../../api/kit/typeReads.js';
import { maintenanceStanding } from '../../domain/use/maintenanceStanding.js';
import { readSpells } from './spells.reads.js';

interface RuleRow extends Row {
  itemId: string;
  everyUseMinutes: number | null;
  everyDays: number | null;
  countsFrom: string;
  lastDoneAt: string | null;
}

/** Some rules with how near each is to falling due, in two statements. */
export async function readMaintenanceRules(
  source: RowSource,
  nowMs: number,
  where: { column: 'id' | 'item_id'; ids: readonly string[] } | 'all in use',
): Promise<Row[]> {
  const condition =
    where === 'all in use'
      ? 'rule.retired_at IS NULL AND item.retired_at IS NULL'
      : source.dialect.isAnyOf(`rule.${where.column}`);
  const rules = await source.rows<RuleRow>(
    `SELECT rule.id AS "id", rule.version AS "version", rule.item_id AS "itemId",
       rule.title AS "title", rule.every_use_minutes AS "everyUseMinutes",
       rule.every_days AS "everyDays", rule.counts_from AS "countsFrom", rule.note AS "note",
       rule.retired_at AS "retiredAt",
       (SELECT MAX(done_at) FROM maintenance_done
         WHERE rule_id = rule.id AND withdrawn_at IS NULL) AS "lastDoneAt"
     FROM maintenance_rule AS rule JOIN item ON item.id = rule.item_id
     WHERE ${condition} ORDER BY rule.id`,
    where === 'all in use' ? [] : [listParameter(where.ids)],
  );
  const spells = await readSpells(source, [...new Set(rules.map(({ itemId }) => itemId))]);
  return rules.map((rule): Row => {
    const { everyUseMinutes, everyDays, countsFrom, lastDoneAt } = rule;
    const sinceMs = Date.parse(lastDoneAt ?? countsFrom);
    const standing = maintenanceStanding(
      { everyUseMinutes, everyDays, sinceMs },
      spells.get(rule.itemId) ?? [],
      nowMs,
    );
    const { isDue, usedMinutes, minutesLeft, dueAtMs, share } = standing;
    return {
      ...rule,
      everyUseHours: everyUseMinutes === null ? null : everyUseMinutes / 60,
      isDue,
      share: Math.round(share * 1000) / 1000,
      usedHours: hours(usedMinutes),
      useHoursLeft: minutesLeft === null ? null : hours(minutesLeft),
      dueAt: dueAtMs === null ? null : new Date(dueAtMs).toISOString(),
    };
  });
}

const hours = (minutes: number): number => Math.round((minutes / 60) * 100) / 100;
