import { dayNumber } from '../dates/dayNumber.js';
import type { LocalDate } from '../dates/localDate.js';
import type { PlannedTask } from './plannedDates.js';

/** Hours that were to be done by the end of a day: each task's spread evenly over its days. */
export function plannedHours(tasks: readonly PlannedTask[], byEndOf: LocalDate): number {
  const day = dayNumber(byEndOf);
  return tasks.reduce((sum, { budgetHours, plannedStartOn, plannedFinishOn }) => {
    const start = dayNumber(plannedStartOn);
    const days = dayNumber(plannedFinishOn) - start + 1;
    return sum + budgetHours * Math.min(1, Math.max(0, (day - start + 1) / days));
  }, 0);
}
