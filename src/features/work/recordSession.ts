import { Checklist } from '../../db/checklist.js';
import { insertRow, insertRows } from '../../db/insertRow.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { beginTask } from './beginTask.js';
import { benchZone } from './benchZone.js';
import { checkSession } from './checkSession.js';
import { breaksOf, keptBreaks } from './keptBreaks.js';
import { whatIsWorkedOn } from './whatIsWorkedOn.js';
import { whoWorks } from './whoWorks.js';
import { WorkBreakEntity } from './workBreak.entity.js';
import { WorkSessionEntity } from './workSession.entity.js';
import type { RecordSessionInput } from './workSession.inputs.js';

/** Time that overlaps another session of the same person is recorded too; it counts once. */
export async function recordSession(work: UnitOfWork, input: RecordSessionInput): Promise<string> {
  const { startedAt, endedAt, breaks } = input;
  const check = new Checklist(work);
  const person = await whoWorks(work, check, input.personId);
  const worked = await whatIsWorkedOn(work, check, input);
  const zone = await benchZone(work, input.zone);
  const times = {
    startedAtMs: startedAt.getTime(),
    endedAtMs: endedAt.getTime(),
    zone,
    breaks: breaksOf(breaks ?? []),
  };
  checkSession(check, times, work.now, input.isLongSessionMeant);
  const note = check.text(input.note, ['note']);
  check.done();
  if (!person || !worked) throw new Error('a session without person or item passed its checks');
  const session = await insertRow(work, WorkSessionEntity, {
    personId: person.id,
    itemId: worked.item.id,
    taskId: worked.task?.id ?? null,
    startedAt: startedAt.toISOString(),
    endedAt: endedAt.toISOString(),
    zone,
    note,
  });
  await insertRows(
    work,
    WorkBreakEntity,
    keptBreaks(breaks ?? []).map((pause) => ({ sessionId: session.id, ...pause })),
  );
  await beginTask(work, worked, session);
  return session.id;
}
