import type { UnitOfWork, Write } from '../../db/unitOfWork.js';
import { appendHistory } from '../history/appendHistory.js';
import { refreshComputed } from '../refreshComputed.js';
import { DemoProblem } from './demoProblem.js';
import type { Happening } from './happening.js';
import { messageOf } from './messageOf.js';

/**
 * Records what happens, in its order, within one unit of work. Each event stands in the history at
 * its own instant; what else follows from a write is computed once for all, at the end.
 * @returns every write.
 */
export async function tellStory(
  outer: UnitOfWork,
  happenings: readonly Happening[],
): Promise<Write[]> {
  const writes: Write[] = [];
  const inOrder = [...happenings].sort((left, right) => left.at.getTime() - right.at.getTime());
  for (const { at, action, where, play } of inOrder) {
    const work = { ...outer, action, now: at.toISOString(), writes: [] as Write[] };
    if (work.now > outer.now) throw new DemoProblem(where, 'It happens after the day of loading.');
    try {
      await play(work);
    } catch (error) {
      throw error instanceof DemoProblem ? error : new DemoProblem(where, messageOf(error), error);
    }
    await appendHistory(work);
    writes.push(...work.writes);
  }
  await refreshComputed({ ...outer, writes });
  return writes;
}
