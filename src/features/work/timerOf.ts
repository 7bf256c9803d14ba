import { Checklist } from '../../db/checklist.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { oneTimerAtATime } from './oneTimerAtATime.js';
import { runningTimer } from './runningTimer.js';
import type { TimerInput } from './timer.inputs.js';
import { whoWorks } from './whoWorks.js';
import { WorkBreakEntity } from './workBreak.entity.js';
import type { WorkSessionEntity } from './workSession.entity.js';

export interface RunningTimer {
  session: WorkSessionEntity;
  /** In time order. */
  breaks: WorkBreakEntity[];
  /** The one that lasts, if one does. */
  openBreak: WorkBreakEntity | null;
}

/** The running timer of the person named, or of the owner, which nobody else changes meanwhile. */
export async function timerOf(
  work: UnitOfWork,
  input: TimerInput,
  check = new Checklist(work),
): Promise<RunningTimer> {
  const person = await whoWorks(work, check, input.personId);
  check.done();
  if (!person) throw new Error('a timer without a person passed its checks');
  await oneTimerAtATime(work, person.id);
  const session = await runningTimer(work, person);
  const breaks = await work.manager.find(WorkBreakEntity, {
    where: { sessionId: session.id },
    order: { startedAt: 'ASC', id: 'ASC' },
  });
  return { session, breaks, openBreak: breaks.find(({ endedAt }) => endedAt === null) ?? null };
}
