import type { FinalCheckFacts } from './readinessFacts.js';

/** The latest check by a procedure; of two at one instant the failed one. null when there is none. */
export function latestCheck(
  procedureCode: string,
  finalChecks: readonly FinalCheckFacts[],
): FinalCheckFacts | null {
  let latest: FinalCheckFacts | null = null;
  for (const check of finalChecks) {
    if (check.procedureCode !== procedureCode) continue;
    const isLater = latest === null || check.doneAtMs > latest.doneAtMs;
    if (isLater || (check.doneAtMs === latest?.doneAtMs && !check.isPassed)) latest = check;
  }
  return latest;
}
