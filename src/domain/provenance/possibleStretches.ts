import { possibleDays, type DateStatement, type DayStretch } from './dateNetwork.js';

/**
 * Which alternatives of a happening stand up to everything else, each cut to the days that are left:
 * one decade of a date code may be ruled out by what is between two others. Null when nothing can be
 * true at all.
 */
export function possibleStretches(
  statements: readonly DateStatement[],
  node: string,
): DayStretch[] | null {
  const days = possibleDays(statements)?.get(node);
  if (days === undefined) return null;
  return days.flatMap((stretch) => {
    const alone: DateStatement = { kind: 'WITHIN', id: '', node, alternatives: [stretch] };
    return possibleDays([...statements, alone])?.get(node) ?? [];
  });
}
