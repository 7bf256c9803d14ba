import type { Checklist } from '../../db/checklist.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';

/** Clocks of the browser and of the server may differ by this much. */
const clockToleranceMs = 60_000;

/**
 * When something was done, as it is kept. Nothing that is recorded as done lies in the future.
 * @returns ISO 8601 UTC; the instant of the act when none is given.
 */
export function pastInstant(
  check: Checklist,
  work: UnitOfWork,
  value: Date | null | undefined,
  path: string[],
): string {
  if (value === null || value === undefined) return work.now;
  const instant = value.toISOString();
  check.that(
    value.getTime() <= Date.parse(work.now) + clockToleranceMs,
    `${instant} lies in the future. Give the time at which it was done.`,
    path,
  );
  return instant;
}
