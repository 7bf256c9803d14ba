import { dateOfDay, dayNumber } from '../dates/dayNumber.js';
import type { LocalDate } from '../dates/localDate.js';
import type { IsAway } from '../pace/awayDays.js';

export interface BudgetedWork {
  readonly taskId: string;
  readonly budgetHours: number;
}

export interface PlannedTask extends BudgetedWork {
  readonly plannedStartOn: LocalDate;
  readonly plannedFinishOn: LocalDate;
}

/** A plan that would run on for longer is no plan. */
const MOST_DAYS = 366 * 100;

/**
 * Puts tasks on a calendar, one after the other in the order given, at so many hours a week spread
 * evenly over its days; nothing is planned on days declared away.
 *
 * @param hoursPerWeek above 0.
 * @throws RangeError when the plan would last more than a hundred years.
 */
export function plannedDates(
  tasks: readonly BudgetedWork[],
  { startsOn, hoursPerWeek, isAway }: { startsOn: LocalDate; hoursPerWeek: number; isAway: IsAway },
): PlannedTask[] {
  const hoursPerDay = hoursPerWeek / 7;
  const first = dayNumber(startsOn);
  let day = first;
  let leftOfDay = hoursPerDay;
  const nextWorkingDay = () => {
    while (isAway(day) && day - first <= MOST_DAYS) day += 1;
    if (day - first > MOST_DAYS) throw new RangeError('This plan would last over a hundred years.');
  };
  nextWorkingDay();
  return tasks.map(({ taskId, budgetHours }) => {
    // What is over by less than a second was lost to rounding, not left to do.
    if (leftOfDay < 1 / 3600) {
      day += 1;
      leftOfDay = hoursPerDay;
      nextWorkingDay();
    }
    const plannedStartOn = dateOfDay(day);
    let left = budgetHours;
    while (left > leftOfDay + 1 / 3600) {
      left -= leftOfDay;
      day += 1;
      leftOfDay = hoursPerDay;
      nextWorkingDay();
    }
    leftOfDay -= left;
    return { taskId, budgetHours, plannedStartOn, plannedFinishOn: dateOfDay(day) };
  });
}
