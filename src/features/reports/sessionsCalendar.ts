import { shownItem } from '../items/shownItem.js';
import { calendarText, calendarWords } from './calendarText.js';
import type { ReportedSession } from './reportedSessions.reads.js';

/** Who worked may be kept to the house. */
export type CalendarSession = Omit<ReportedSession, 'person'> & { person: string | null };

/** Sessions as calendar events; each keeps its identity, so that a reader replaces what it has. */
export const sessionsCalendar = (
  name: string,
  sessions: readonly CalendarSession[],
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

function summaryOf(session: CalendarSession): string {
  const { inventoryNumber, itemName: name, task } = session;
  return `${shownItem({ inventoryNumber, name })}: ${task ?? 'work on the whole'}`;
}

function descriptionOf({ netSeconds, person, project, note }: CalendarSession): string {
  const hours = Math.round((netSeconds / 3600) * 100) / 100;
  const by = person === null ? '' : `, by ${person}`;
  return [`${hours} h net of breaks${by}.`, project, note]
    .filter((line) => line !== null)
    .join('\n');
}
