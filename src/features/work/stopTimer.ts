import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import { removeRow } from '../../db/removeRow.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { checkSession } from './checkSession.js';
import { breaksOf } from './keptBreaks.js';
import { endQuestion } from './endQuestion.js';
import { localMinute } from './localMinute.js';
import type { StopTimerInput } from './timer.inputs.js';
import { timerOf, type RunningTimer } from './timerOf.js';
import { WorkBreakEntity } from './workBreak.entity.js';
import { WorkSessionEntity } from './workSession.entity.js';

/**
 * Ends the session. A break that still lasts ends with it; one that began only then, or later, was
 * the end of the work and is taken away. A timer left running for long is not counted on its word.
 */
export async function stopTimer(work: UnitOfWork, input: StopTimerInput): Promise<string> {
  const check = new Checklist(work);
  const note = check.text(input.note, ['note']);
  const timer = await timerOf(work, input, check);
  const { session, openBreak } = timer;
  const endedAt = input.endedAt?.toISOString() ?? work.now;
  if (!input.endedAt) askForEnd(check, timer, work.now);
  check.done();
  const isTakenAway = openBreak !== null && openBreak.startedAt >= endedAt;
  const breaks = timer.breaks
    .filter((pause) => pause !== openBreak || !isTakenAway)
    .map((pause) => (pause === openBreak ? { ...pause, endedAt } : pause));
  const times = {
    startedAtMs: Date.parse(session.startedAt),
    endedAtMs: Date.parse(endedAt),
    zone: session.zone,
    breaks: breaksOf(breaks),
  };
  // Whoever states the end of a long session means it; no timer passes 16 hours without that.
  checkSession(check, times, work.now, true);
  check.done();
  if (openBreak && isTakenAway) await removeRow(work, WorkBreakEntity, openBreak.id);
  else if (openBreak) await changeRow(work, WorkBreakEntity, openBreak.id, null, { endedAt });
  const remarks = [session.note, note].filter((text) => text !== null);
  await changeRow(work, WorkSessionEntity, session.id, null, {
    endedAt,
    note: remarks.length === 0 ? null : remarks.join('\n'),
  });
  return session.id;
}

function askForEnd(check: Checklist, { session, openBreak }: RunningTimer, now: string): void {
  const since = localMinute(session.startedAt, session.zone);
  if (now <= session.startedAt) {
    check.refuse(
      `The timer started at ${since} and the clock is not past that: was it set back? Set the ` +
        'clock, or correct the start of the session.',
      ['endedAt'],
    );
  }
  const question = endQuestion(session, Date.parse(now), openBreak?.startedAt ?? null);
  if (question !== null) check.refuse(question, ['endedAt']);
}
