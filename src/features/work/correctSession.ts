import { globalId, recordId } from '../../api/kit/globalId.js';
import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import { Refusal } from '../../db/refusal.js';
import { touchRow } from '../../db/touchRow.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { checkSession } from './checkSession.js';
import { breaksOf, keptBreaks } from './keptBreaks.js';
import { oneTimerAtATime } from './oneTimerAtATime.js';
import { refuseSecondTimer } from './refuseSecondTimer.js';
import { replaceBreaks } from './replaceBreaks.js';
import { whatIsWorkedOn } from './whatIsWorkedOn.js';
import { whoWorks } from './whoWorks.js';
import { WorkBreakEntity } from './workBreak.entity.js';
import { WorkSessionEntity } from './workSession.entity.js';
import type { CorrectSessionInput } from './workSession.inputs.js';

/** What a session said before is kept in the history. */
export async function correctSession(
  work: UnitOfWork,
  input: CorrectSessionInput,
): Promise<string> {
  const id = recordId('WorkSession', input.id);
  const session = await work.manager.findOneBy(WorkSessionEntity, { id });
  if (!session) throw Refusal.notFound('work session');
  const check = new Checklist(work);
  const person = await whoWorks(work, check, input.personId ?? globalId('Party', session.personId));
  const isMoved = Boolean(input.itemId) || Boolean(input.taskId);
  const worked = isMoved ? await whatIsWorkedOn(work, check, input) : null;
  const startedAt = input.startedAt?.toISOString() ?? session.startedAt;
  const endedAt = input.endedAt?.toISOString() ?? session.endedAt;
  const zone = input.zone ?? session.zone;
  const isRunning = session.endedAt === null;
  check.that(!isRunning || !input.endedAt, 'The timer still runs: end it with stopTimer.', [
    'endedAt',
  ]);
  const kept = await work.manager.find(WorkBreakEntity, {
    where: { sessionId: id },
    order: { startedAt: 'ASC', id: 'ASC' },
  });
  const times = {
    startedAtMs: Date.parse(startedAt),
    endedAtMs: endedAt === null ? null : Date.parse(endedAt),
    zone,
    breaks: breaksOf(input.breaks ?? kept),
  };
  // How long a running timer may be is asked when it is stopped.
  checkSession(check, times, work.now, input.isLongSessionMeant || isRunning);
  const note = input.note === undefined ? undefined : check.text(input.note, ['note']);
  check.done();
  if (person && isRunning && person.id !== session.personId) {
    await oneTimerAtATime(work, person.id);
    await refuseSecondTimer(work, person);
  }
  const after = await changeRow(work, WorkSessionEntity, id, input.version, {
    ...(person && { personId: person.id }),
    ...(worked && { itemId: worked.item.id, taskId: worked.task?.id ?? null }),
    startedAt,
    endedAt,
    zone,
    ...(note !== undefined && { note }),
  });
  if (!input.breaks) return id;
  const isChanged = await replaceBreaks(work, id, kept, keptBreaks(input.breaks));
  if (isChanged && after.version === input.version) {
    await touchRow(work, WorkSessionEntity, id, input.version);
  }
  return id;
}
