import { DateTime } from 'luxon';
import type { Reader } from '../../db/reader.js';
import { finalCheckStanding } from '../../domain/readiness/finalCheckStanding.js';
import { shownItem } from '../items/shownItem.js';
import { readFinalChecks } from '../readiness/finalCheckFacts.reads.js';
import { calendarText, calendarWords } from './calendarText.js';

interface Due {
  itemId: string;
  itemName: string;
  procedureCode: string;
  procedure: string;
  lapsesAtMs: number;
}

/** The day on which each final check goes stale, as all-day events in the collection's zone. */
export async function maintenanceCalendar(
  reader: Reader,
  { name, zone, nowMs }: { name: string; zone: string; nowMs: number },
): Promise<string> {
  const due = await readDueChecks(reader);
  return calendarText(
    `${name}: checks falling due`,
    due.map(({ itemId, itemName, procedureCode, procedure, lapsesAtMs }) => {
      const { year, month, day } = DateTime.fromMillis(lapsesAtMs, { zone });
      const isOver = lapsesAtMs <= nowMs;
      return {
        id: `${itemId}-${Buffer.from(procedureCode).toString('hex')}@reglow`,
        stamp: new Date(nowMs),
        // The library writes the local day of a date without a time.
        start: new Date(year, month - 1, day),
        allDay: true,
        summary: calendarWords(
          `${itemName}: “${procedure}” ${isOver ? 'has gone stale' : 'goes stale'}`,
        ),
        description: calendarWords(
          `Make the final check “${procedure}” again and record it. An aid to memory: local codes, the licence held and qualified practice come first.`,
        ),
      };
    }),
  );
}

/** The latest passed check of each procedure on what is in the collection, soonest first. */
async function readDueChecks(reader: Reader): Promise<Due[]> {
  const items = await reader.rows<{ id: string; inventoryNumber: string; name: string | null }>(
    `SELECT id AS "id", inventory_number AS "inventoryNumber", name AS "name" FROM item
     WHERE retired_at IS NULL AND EXISTS (SELECT 1 FROM final_check WHERE item_id = item.id)`,
  );
  const checks = await readFinalChecks(
    reader,
    items.map(({ id }) => id),
  );
  return items
    .flatMap((item) => {
      const known = checks.get(item.id);
      if (!known) return [];
      const { lapses } = finalCheckStanding(item.id, known.procedures, known.finalChecks);
      return lapses.map(({ procedureCode, name, lapsesAtMs }) => ({
        itemId: item.id,
        itemName: shownItem(item),
        procedureCode,
        procedure: name,
        lapsesAtMs,
      }));
    })
    .sort((left, right) => left.lapsesAtMs - right.lapsesAtMs);
}
