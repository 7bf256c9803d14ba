import { pastInstant } from '../../api/kit/pastInstant.js';
import type { Checklist } from '../../db/checklist.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import type { BringUpEntity } from './bringUp.entity.js';

/** When a step was done: in the past, and not before its bring-up began. */
export function stepDoneAt(
  check: Checklist,
  work: UnitOfWork,
  { startedAt }: Pick<BringUpEntity, 'startedAt'>,
  given: Date | null | undefined,
): string {
  const doneAt = pastInstant(check, work, given, ['doneAt']);
  check.that(
    doneAt >= startedAt,
    `The bring-up began at ${startedAt}; a step of it was not done before that.`,
    ['doneAt'],
  );
  return doneAt;
}
