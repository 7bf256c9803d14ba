import type { ICalEventData } from 'ical-generator';
import { DateTime } from 'luxon';
import type { Reader } from '../../db/reader.js';
import { calendarText, calendarWords } from './calendarText.js';
import { readChecksFallingDue, type CheckFallingDue } from './checksFallingDue.reads.js';
import { readMaintenanceFallingDue, type FallingDue } from './maintenanceFallingDue.reads.js';

const reminder =
  'An aid to memory: local codes, the licence held and qualified practice come first.';

export interface When {
  zone: string;
  nowMs: number;
}

/**
 * The days on which final checks go stale and maintenance falls due, as all-day events in the
 * collection's zone.
 */
export async function maintenanceCalendar(
  reader: Reader,
  { name, ...when }: When & { name: string },
): Promise<string> {
  const events = await fallingDueEvents(reader, when);
  return calendarText(`${name}: checks and maintenance falling due`, events);
}

/** The same as events, for a calendar that has others beside them. */
export async function fallingDueEvents(reader: Reader, when: When): Promise<ICalEventData[]> {
  const checks = await readChecksFallingDue(reader);
  const rules = await readMaintenanceFallingDue(reader, when.nowMs);
  return [
    ...checks.map((due) => checkEvent(due, when)),
    ...rules.map((due) => maintenanceEvent(due, when)),
  ];
}

function checkEvent(
  { itemId, itemName, procedureCode, procedure, lapsesAtMs }: CheckFallingDue,
  when: When,
): ICalEventData {
  const isOver = lapsesAtMs <= when.nowMs;
  return {
    ...allDay(lapsesAtMs, when),
    id: `${itemId}-${Buffer.from(procedureCode).toString('hex')}@reglow`,
    summary: calendarWords(
      `${itemName}: “${procedure}” ${isOver ? 'has gone stale' : 'goes stale'}`,
    ),
    description: calendarWords(
      `Make the final check “${procedure}” again and record it. ${reminder}`,
    ),
  };
}

function maintenanceEvent(
  { ruleId, itemName, title, dueAtMs, isDueByUse }: FallingDue,
  when: When,
): ICalEventData {
  const isOver = dueAtMs <= when.nowMs;
  const why = isDueByUse ? 'Its hours of use are spent. ' : '';
  return {
    ...allDay(dueAtMs, when),
    id: `${ruleId}@reglow`,
    summary: calendarWords(`${itemName}: “${title}” ${isOver ? 'is due' : 'falls due'}`),
    description: calendarWords(`${why}Do it and record it. ${reminder}`),
  };
}

/** The library writes the local day of a date without a time. */
function allDay(atMs: number, { zone, nowMs }: When) {
  const { year, month, day } = DateTime.fromMillis(atMs, { zone });
  return { stamp: new Date(nowMs), start: new Date(year, month - 1, day), allDay: true };
}
