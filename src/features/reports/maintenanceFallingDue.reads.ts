import type { Reader } from '../../db/reader.js';
import { listParameter } from '../../db/dialect.js';
import { shownItem } from '../items/shownItem.js';
import { readMaintenanceRules } from '../use/maintenanceRules.reads.js';

export interface FallingDue {
  ruleId: string;
  itemName: string;
  title: string;
  /** When the calendar makes it due; now, when hours of use have made it due already. */
  dueAtMs: number;
  isDueByUse: boolean;
}

/**
 * Every rule in use that has a day: by the calendar, or because its hours of use are spent. One
 * that only waits for hours has none, and is left out.
 */
export async function readMaintenanceFallingDue(
  reader: Reader,
  nowMs: number,
): Promise<FallingDue[]> {
  const rules = await readMaintenanceRules(reader, nowMs, 'all in use');
  const items = await reader.rows<{ id: string; inventoryNumber: string; name: string | null }>(
    `SELECT id AS "id", inventory_number AS "inventoryNumber", name AS "name" FROM item
     WHERE ${reader.dialect.isAnyOf('id')}`,
    [listParameter([...new Set(rules.map((rule) => rule['itemId'] as string))])],
  );
  const names = new Map(items.map((item) => [item.id, shownItem(item)]));
  return rules
    .flatMap((rule): FallingDue[] => {
      const { dueAt, useHoursLeft } = rule as {
        dueAt?: string | null;
        useHoursLeft?: number | null;
      };
      const byCalendarMs = typeof dueAt === 'string' ? Date.parse(dueAt) : Infinity;
      const isDueByUse =
        typeof useHoursLeft === 'number' && useHoursLeft <= 0 && byCalendarMs > nowMs;
      const dueAtMs = isDueByUse ? nowMs : byCalendarMs;
      if (dueAtMs === Infinity) return [];
      const itemName = names.get(rule['itemId'] as string) ?? '';
      return [{ ruleId: rule.id, itemName, title: rule['title'] as string, dueAtMs, isDueByUse }];
    })
    .sort((left, right) => left.dueAtMs - right.dueAtMs);
}
