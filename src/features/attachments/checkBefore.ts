import type { Checklist } from '../../db/checklist.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';

/** A pair is a picture taken after the work beside one taken before it. */
export async function checkBefore(
  work: UnitOfWork,
  check: Checklist,
  beforeId: string | null,
  role: string,
  ownId: string | null = null,
): Promise<void> {
  if (beforeId === null) return;
  await check.exists('attachment', beforeId, ['beforeId']);
  check.that(
    role === 'AFTER',
    'Only what shows the state AFTER the work can be seen beside a picture from before it.',
    ['beforeId'],
  );
  check.that(beforeId !== ownId, 'It cannot be paired with itself.', ['beforeId']);
}
