import type { Problem } from '../problem.js';
import type { ThreePointEstimate } from './threePointEstimate.js';

export type EstimateProblemCode =
  | 'HOURS_NOT_A_NUMBER'
  | 'HOURS_NEGATIVE'
  | 'HOURS_ABSURD'
  | 'HOURS_OUT_OF_ORDER'
  | 'HOURS_ALL_ZERO';

// About five years of full-time work: a single task above it is a slip of the keyboard.
const MOST_HOURS = 10_000;

/** Everything that is wrong with an estimate as entered; empty when nothing is. */
export function estimateProblems(
  estimate: Omit<ThreePointEstimate, 'distribution'>,
): Problem<EstimateProblemCode>[] {
  const problems: Problem<EstimateProblemCode>[] = [];
  const add = (code: EstimateProblemCode, field: string, message: string) =>
    problems.push({ code, message, path: [field], severity: 'ERROR' });
  const { optimisticHours, likelyHours, pessimisticHours } = estimate;

  for (const [field, label, hours] of [
    ['optimisticHours', 'optimistic', optimisticHours],
    ['likelyHours', 'likely', likelyHours],
    ['pessimisticHours', 'pessimistic', pessimisticHours],
  ] as const) {
    if (Number.isNaN(hours)) {
      add('HOURS_NOT_A_NUMBER', field, `Give the ${label} figure as a number of hours.`);
    } else if (hours < 0) {
      add('HOURS_NEGATIVE', field, `The ${label} figure cannot be less than 0 hours.`);
    } else if (hours > MOST_HOURS) {
      add(
        'HOURS_ABSURD',
        field,
        `The ${label} figure is above 10,000 hours. Correct it, or split the task.`,
      );
    }
  }
  if (optimisticHours > likelyHours) {
    add('HOURS_OUT_OF_ORDER', 'likelyHours', 'The likely figure is below the optimistic one.');
  }
  if (likelyHours > pessimisticHours) {
    add(
      'HOURS_OUT_OF_ORDER',
      'pessimisticHours',
      'The pessimistic figure is below the likely one.',
    );
  }
  if (optimisticHours === 0 && likelyHours === 0 && pessimisticHours === 0) {
    add(
      'HOURS_ALL_ZERO',
      'pessimisticHours',
      'A task that is still open takes some time. Give a pessimistic figure above 0 hours.',
    );
  }
  return problems;
}
