import { queryInWork } from '../../db/queryInWork.js';
import { Refusal } from '../../db/refusal.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';

/**
 * What was measured at a step of a bring-up decides how the step came out: it is put right there,
 * so that the run follows.
 */
export async function refuseReadingOfStep(work: UnitOfWork, readingId: string): Promise<void> {
  const [step] = await queryInWork<{ stepKey: string }>(
    work,
    `SELECT step_key AS "stepKey" FROM bring_up_step
     WHERE withdrawn_at IS NULL AND reading_ids LIKE '%"' || ? || '"%'`,
    [readingId],
  );
  if (!step) return;
  throw Refusal.conflict(
    `It was taken at the step “${step.stepKey}” of a bring-up. Put that step right with \`correctBringUpStep\`, so that its outcome is judged anew.`,
    ['id'],
  );
}
