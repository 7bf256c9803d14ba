import { recordId } from '../../api/kit/globalId.js';
import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import { Refusal } from '../../db/refusal.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { BringUpEntity } from './bringUp.entity.js';
import type { AbandonBringUpInput } from './bringUp.inputs.js';

/** Gives a run up for now; what was recorded stays, and so do the findings that it opened. */
export async function abandonBringUp(
  work: UnitOfWork,
  input: AbandonBringUpInput,
): Promise<string> {
  const id = recordId('BringUp', input.id);
  const check = new Checklist(work);
  const reason = check.words(input.reason, ['reason'], 1000);
  check.done();
  const run = await work.manager.findOneBy(BringUpEntity, { id });
  if (!run) throw Refusal.notFound('bring-up');
  if (run.status === 'PASSED') {
    throw Refusal.conflict('This bring-up is passed and closed.', ['id']);
  }
  await changeRow(work, BringUpEntity, id, input.version, {
    status: 'ABANDONED',
    reason,
    endedAt: work.now,
  });
  return id;
}
