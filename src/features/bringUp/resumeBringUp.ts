import { recordId } from '../../api/kit/globalId.js';
import { changeRow } from '../../db/changeRow.js';
import { queryInWork } from '../../db/queryInWork.js';
import { Refusal } from '../../db/refusal.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { BringUpEntity } from './bringUp.entity.js';
import type { ResumeBringUpInput } from './bringUp.inputs.js';
import { closeWhenPassed } from './closeAsPassed.js';
import { oneRunAtATime, refuseOtherRun } from './oneRunAtATime.js';

/** Goes on where it ended. A gate that failed has to be done again; its finding is settled first. */
export async function resumeBringUp(work: UnitOfWork, input: ResumeBringUpInput): Promise<string> {
  const id = recordId('BringUp', input.id);
  const found = await work.manager.findOneBy(BringUpEntity, { id });
  if (!found) throw Refusal.notFound('bring-up');
  await oneRunAtATime(work, found.itemId);
  const run = await work.manager.findOneByOrFail(BringUpEntity, { id });
  if (run.status === 'UNDER_WAY' || run.status === 'PASSED') {
    const why = run.status === 'PASSED' ? 'is passed and closed' : 'is under way already';
    throw Refusal.conflict(`This bring-up ${why}.`, ['id']);
  }
  const [open] = await queryInWork<{ note: string }>(
    work,
    `SELECT finding.note AS "note" FROM bring_up_step
     JOIN finding ON finding.id = bring_up_step.finding_id
     WHERE bring_up_step.bring_up_id = ? AND finding.status = 'OPEN' ORDER BY finding.seen_at`,
    [id],
  );
  if (open) {
    throw Refusal.conflict(`Settle the finding that it opened first: ${open.note}`, ['id']);
  }
  await refuseOtherRun(work, run.itemId, id);
  const resumed = await changeRow(work, BringUpEntity, id, input.version, {
    status: 'UNDER_WAY',
    reason: null,
    endedAt: null,
  });
  await closeWhenPassed(work, resumed);
  return id;
}
