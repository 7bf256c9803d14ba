import { shownItem } from '../items/shownItem.js';
import { calendarText, calendarWords } from './calendarText.js';
import type { ReportedSession } from './reportedSessions.reads.js';

/** Sessions as calendar events; each keeps its identity, so that a reader replaces what it has. */
export const sessionsCalendar = (
  name: string,
  sessions: readonly ReportedSession[],
  nowMs: number,
): string =>
  calendarText(
    `${name}: work sessions`,
    sessions.map((session) => ({
      id: `${session.id}@reglow`,
      sequence: session.version - 1,
      stamp: new Date(nowMs),
      lastModified: new Date(session.changedAt),
      start: new Date(session.startedAt),
      end: new Date(session.endedAt),
      summary: calendarWords(summaryOf(session)),
      description: calendarWords(descriptionOf(session)),
    })),
  );

function summaryOf(session: ReportedSession): string {
  const { inventoryNumber, itemName: name, task } = session;
  return `${shownItem({ inventoryNumber, name })}: ${task ?? 'work on the whole'}`;
}

function descriptionOf({ netSeconds, person, project, note }: ReportedSession): string {
  const hours = Math.round((netSeconds / 3600) * 100) / 100;
  return [`${hours} h net of breaks, by ${person}.`, project, note]
    .filter((line) => line !== null)
    .join('\n');
}
