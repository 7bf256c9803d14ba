import { changeRow } from '../../db/changeRow.js';
import { Refusal } from '../../db/refusal.js';
import { touchRow } from '../../db/touchRow.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { localMinute } from './localMinute.js';
import type { TimerInput } from './timer.inputs.js';
import { timerOf } from './timerOf.js';
import { WorkBreakEntity } from './workBreak.entity.js';
import { WorkSessionEntity } from './workSession.entity.js';

export async function endBreak(work: UnitOfWork, input: TimerInput): Promise<string> {
  const { session, openBreak } = await timerOf(work, input);
  if (!openBreak) throw Refusal.conflict('No break lasts: there is none to end.');
  if (work.now <= openBreak.startedAt) {
    throw Refusal.conflict(
      `The break began at ${localMinute(openBreak.startedAt, session.zone)} and the clock is not ` +
        'past that. Set the clock, or correct the session.',
    );
  }
  await touchRow(work, WorkSessionEntity, session.id, null);
  await changeRow(work, WorkBreakEntity, openBreak.id, null, { endedAt: work.now });
  return session.id;
}
