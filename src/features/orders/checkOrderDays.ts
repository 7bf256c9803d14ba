import type { Checklist } from '../../db/checklist.js';

/** Nothing is expected, and nothing comes, before it was ordered. */
export function checkOrderDays(
  check: Checklist,
  days: { orderedOn: string; expectedOn?: string | null; arrivedOn?: string | null },
): void {
  const { orderedOn, expectedOn, arrivedOn } = days;
  check.that(
    !expectedOn || expectedOn >= orderedOn,
    `This is before the day it was ordered, ${orderedOn}.`,
    ['expectedOn'],
  );
  check.that(
    !arrivedOn || arrivedOn >= orderedOn,
    `This is before the day it was ordered, ${orderedOn}.`,
    ['arrivedOn'],
  );
}
