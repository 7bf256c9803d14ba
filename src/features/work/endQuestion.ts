import { localMinute } from './localMinute.js';
import { isForgottenTimer } from './sessionBounds.js';

/** What to ask about a timer that has run for too long to be believed; null when it has not. */
export function endQuestion(
  session: { startedAt: string; endedAt: string | null; zone: string },
  nowMs: number,
  openBreakSince: string | null = null,
): string | null {
  const startedAtMs = Date.parse(session.startedAt);
  const endedAtMs = session.endedAt === null ? null : Date.parse(session.endedAt);
  if (!isForgottenTimer({ startedAtMs, endedAtMs }, nowMs)) return null;
  const pause =
    openBreakSince === null
      ? ''
      : ` A break has lasted since ${localMinute(openBreakSince, session.zone)}.`;
  return (
    `The timer has been running since ${localMinute(session.startedAt, session.zone)}, ` +
    `more than 16 hours.${pause} Say when the work ended: send endedAt.`
  );
}
