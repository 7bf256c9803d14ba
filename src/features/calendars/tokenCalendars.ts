import type { ICalEventData } from 'ical-generator';
import type { ApiContext } from '../../api/kit/apiContext.js';
import type { Hiding } from '../dossier/hidingOf.js';
import { hidingFor } from '../readTokens/hidingFor.js';
import { TokenAllowance } from '../readTokens/tokenAllowance.js';
import { calendarText } from '../reports/calendarText.js';
import { fallingDueEvents } from '../reports/maintenanceCalendar.js';
import { reportPeriod } from '../reports/reportPeriod.js';
import { readReportedSessions, type ReportedSession } from '../reports/reportedSessions.reads.js';
import { sessionsCalendar, type CalendarSession } from '../reports/sessionsCalendar.js';
import { loanEvents } from './loanEvents.js';

type Shows = ReadonlySet<TokenAllowance>;

const daysBack = 366;
const dayMs = 86_400_000;

export interface CalendarDays {
  /** First day; a year ago if null. */
  from: string | null;
  /** Last day; today if null. */
  to: string | null;
}

/** Sessions at the bench, with what the token shows. */
export async function sessionsForToken(
  context: ApiContext,
  shows: Shows,
  { from, to }: CalendarDays,
): Promise<string> {
  const { nowMs } = context;
  const { reader } = context.database;
  const last = to ?? dayOf(nowMs);
  const period = await reportPeriod(
    context,
    from ?? dayOf(Date.parse(last) - daysBack * dayMs),
    last,
  );
  const sessions = await readReportedSessions(reader, { ...period, itemId: null }, nowMs);
  const hiding = await hidingFor(reader, shows);
  return sessionsCalendar(
    hiding(period.collectionName),
    sessions.map((session) => outward(session, shows, hiding)),
    nowMs,
  );
}

/** Checks, maintenance and loans falling due, with what the token shows. */
export async function dueForToken(context: ApiContext, shows: Shows): Promise<string> {
  const { reader } = context.database;
  const today = dayOf(context.nowMs);
  const { collectionName, zone } = await reportPeriod(context, today, today);
  const hiding = await hidingFor(reader, shows);
  const when = { zone, nowMs: context.nowMs };
  const events = [
    ...(await fallingDueEvents(reader, when)),
    ...(await loanEvents(reader, when, shows.has('PEOPLE'))),
  ];
  return calendarText(`${hiding(collectionName)}: what falls due`, events.map(hidden(hiding)));
}

const dayOf = (ms: number): string =>
  Number.isNaN(ms) ? 'no day' : new Date(ms).toISOString().slice(0, 10);

/** Remarks are written for oneself: they go out only where everything may. */
function outward(session: ReportedSession, shows: Shows, hiding: Hiding): CalendarSession {
  const { person, note, itemName, project, task } = session;
  const hide = (text: string | null): string | null => (text === null ? null : hiding(text));
  const isAllShown = Object.values(TokenAllowance).every((allowance) => shows.has(allowance));
  return {
    ...session,
    person: shows.has('PEOPLE') ? person : null,
    note: isAllShown ? hide(note) : null,
    itemName: hide(itemName),
    project: hide(project),
    task: hide(task),
  };
}

const hidden =
  (hiding: Hiding) =>
  (event: ICalEventData): ICalEventData => ({
    ...event,
    ...(typeof event.summary === 'string' && { summary: hiding(event.summary) }),
    ...(typeof event.description === 'string' && { description: hiding(event.description) }),
  });
