import { oneAtATime } from '../../db/oneAtATime.js';
import { queryInWork } from '../../db/queryInWork.js';
import { Refusal } from '../../db/refusal.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';

/** Whatever changes how the runs on an item stand waits for its turn. */
export const oneRunAtATime = (work: UnitOfWork, itemId: string): Promise<void> =>
  oneAtATime(work, `bring-up of ${itemId}`);

/** Another run on an item that is under way or stopped. @param ownId the run that does not count */
export async function otherRunOn(
  work: UnitOfWork,
  itemId: string,
  ownId: string | null,
): Promise<{ id: string; startedAt: string; status: string } | undefined> {
  const others = await queryInWork<{ id: string; startedAt: string; status: string }>(
    work,
    `SELECT id AS "id", started_at AS "startedAt", status AS "status" FROM bring_up
     WHERE item_id = ? AND status IN ('UNDER_WAY', 'STOPPED') ORDER BY started_at`,
    [itemId],
  );
  return others.find(({ id }) => id !== ownId);
}

/**
 * An item is brought up by one procedure at a time.
 * @param ownId the run that may go on
 * @throws Refusal when another one is under way or stopped
 */
export async function refuseOtherRun(
  work: UnitOfWork,
  itemId: string,
  ownId: string | null,
): Promise<void> {
  const other = await otherRunOn(work, itemId, ownId);
  if (!other) return;
  throw Refusal.conflict(
    `A bring-up of this item, begun at ${other.startedAt}, is ${other.status === 'STOPPED' ? 'stopped at a gate' : 'under way'}. Finish it or abandon it first.`,
    ['itemId'],
  );
}
