import type { Checklist } from '../../db/checklist.js';
import { sessionProblems, type SessionAsEntered } from '../../domain/hours/sessionProblems.js';
import { longestSessionMs } from './sessionBounds.js';

/** Whatever is wrong with a session's times goes to the checklist, all at once. */
export function checkSession(
  check: Checklist,
  session: SessionAsEntered,
  now: string,
  isLongSessionMeant: boolean,
): void {
  for (const { message, path, severity } of sessionProblems(session, Date.parse(now))) {
    if (severity === 'ERROR') check.refuse(message, [...path]);
    else if (!isLongSessionMeant) {
      check.refuse(`${message} To confirm it, send isLongSessionMeant: true.`, [...path]);
    }
  }
  const { startedAtMs, endedAtMs } = session;
  if (endedAtMs !== null && endedAtMs - startedAtMs > longestSessionMs) {
    check.refuse('No session lasts more than 7 days. Write down one for each stretch of work.', [
      'endedAt',
    ]);
  }
}
