import { possibleDays, type DateStatement } from './dateNetwork.js';

/**
 * The fewest statements that cannot all be true, by their ids; null when all can.
 *
 * Every smallest conflict meets every set of statements whose removal would leave the rest possible;
 * so the smallest set that meets all such sets found so far is tried, and either conflicts or shows
 * one more (Ignatiev, Previti, Liffiton, Marques-Silva, Smallest MUS extraction with minimal hitting
 * set dualization, CP 2015). Of several equally small ones, the first in the order given.
 */
export function smallestConflict(statements: readonly DateStatement[]): string[] | null {
  if (possibleDays(statements) !== null) return null;
  const removals: (readonly number[])[] = [];
  for (;;) {
    const tried = smallestMeeting(removals, statements.length);
    const kept = new Set(tried);
    if (!isPossible(statements, kept)) return tried.map((index) => idOf(statements, index));
    for (let index = 0; index < statements.length; index++) {
      kept.add(index);
      if (!isPossible(statements, kept)) kept.delete(index);
    }
    removals.push(statements.map((_, index) => index).filter((index) => !kept.has(index)));
  }
}

const isPossible = (statements: readonly DateStatement[], kept: ReadonlySet<number>): boolean =>
  possibleDays(statements.filter((_, index) => kept.has(index))) !== null;

const idOf = (statements: readonly DateStatement[], index: number): string =>
  statements[index]?.id ?? '';

/** The smallest set of indices that has one of each list: by depth, so that the first is smallest. */
function smallestMeeting(lists: readonly (readonly number[])[], count: number): number[] {
  for (let size = 0; size <= count; size++) {
    const found = meeting(lists, [], size);
    if (found) return [...found].sort((one, other) => one - other);
  }
  return [];
}

function meeting(
  lists: readonly (readonly number[])[],
  chosen: readonly number[],
  left: number,
): readonly number[] | null {
  const open = lists.find((list) => !list.some((index) => chosen.includes(index)));
  if (!open) return chosen;
  if (left === 0) return null;
  for (const index of open) {
    const found = meeting(lists, [...chosen, index], left - 1);
    if (found) return found;
  }
  return null;
}
