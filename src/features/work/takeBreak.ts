import { insertRow } from '../../db/insertRow.js';
import { Refusal } from '../../db/refusal.js';
import { touchRow } from '../../db/touchRow.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { localMinute } from './localMinute.js';
import type { TimerInput } from './timer.inputs.js';
import { timerOf } from './timerOf.js';
import { WorkBreakEntity } from './workBreak.entity.js';
import { WorkSessionEntity } from './workSession.entity.js';

export async function takeBreak(work: UnitOfWork, input: TimerInput): Promise<string> {
  const { session, breaks, openBreak } = await timerOf(work, input);
  if (openBreak) {
    const since = localMinute(openBreak.startedAt, session.zone);
    throw Refusal.conflict(`A break has lasted since ${since} already. End it first.`);
  }
  // Where the clock has been set back, a break would begin before what is on record.
  const latest = breaks.at(-1)?.endedAt ?? session.startedAt;
  if (work.now < latest) {
    throw Refusal.conflict(
      `The clock shows a time before ${localMinute(latest, session.zone)}, which is on record. ` +
        'Set the clock, or correct the session.',
    );
  }
  await touchRow(work, WorkSessionEntity, session.id, null);
  const pause = { sessionId: session.id, startedAt: work.now, endedAt: null };
  await insertRow(work, WorkBreakEntity, pause);
  return session.id;
}
