import { changeRow } from '../../db/changeRow.js';
import { insertRow } from '../../db/insertRow.js';
import { removeRow } from '../../db/removeRow.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { WorkBreakEntity } from './workBreak.entity.js';

/**
 * Makes a session's breaks those given; both lists are in time order. A break that never was is
 * taken away, and the history keeps it.
 * @returns whether anything changed.
 */
export async function replaceBreaks(
  work: UnitOfWork,
  sessionId: string,
  kept: readonly WorkBreakEntity[],
  wanted: readonly { startedAt: string; endedAt: string | null }[],
): Promise<boolean> {
  const before = work.writes.length;
  // Surplus first: only one break of a session may be open at any moment.
  for (const { id } of kept.slice(wanted.length)) await removeRow(work, WorkBreakEntity, id);
  for (const [index, times] of wanted.entries()) {
    const known = kept[index];
    if (known) await changeRow(work, WorkBreakEntity, known.id, null, times);
    else await insertRow(work, WorkBreakEntity, { sessionId, ...times });
  }
  return work.writes.length > before;
}
