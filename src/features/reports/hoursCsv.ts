import { DateTime } from 'luxon';
import { csvText } from '../export/csvText.js';
import type { ReportedSession } from './reportedSessions.reads.js';
import { sheetCell } from './sheetCell.js';

const columns = [
  'date',
  'start',
  'end',
  'time_zone',
  'person',
  'item',
  'item_name',
  'project',
  'task',
  'kind',
  'break_hours',
  'net_hours',
  'counted_hours',
  'note',
];

/**
 * Sessions as CSV (RFC 4180), a session a row, times as the clock at the bench showed them.
 * `counted_hours` add up to the hours that Reglow shows: what two sessions of a person share is in
 * the one that began first.
 */
export const hoursCsv = (sessions: readonly ReportedSession[]): string =>
  csvText([columns, ...sessions.map(rowOf)]);

function rowOf(session: ReportedSession): string[] {
  const { zone, person, inventoryNumber, itemName, project, task, taskKind, note } = session;
  const start = DateTime.fromISO(session.startedAt, { zone });
  const end = DateTime.fromISO(session.endedAt, { zone });
  return [
    start.toFormat('yyyy-MM-dd'),
    start.toFormat("yyyy-MM-dd'T'HH:mm:ssZZ"),
    end.toFormat("yyyy-MM-dd'T'HH:mm:ssZZ"),
    zone,
    sheetCell(person),
    sheetCell(inventoryNumber),
    sheetCell(itemName),
    sheetCell(project),
    sheetCell(task),
    taskKind,
    hours(session.breakSeconds),
    hours(session.netSeconds),
    hours(session.countedSeconds),
    sheetCell(note),
  ];
}

/** To the ten-thousandth, a third of a second. */
const hours = (seconds: number): string => (seconds / 3600).toFixed(4);
