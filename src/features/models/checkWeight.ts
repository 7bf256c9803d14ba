import type { Checklist } from '../../db/checklist.js';

const largest = 1_000_000;

/** How much a position counts; what is wrong with it goes to the checklist. */
export function checkWeight<Missing extends null | undefined>(
  check: Checklist,
  weight: number | Missing,
  path: string[],
): number | Missing {
  check.that(
    typeof weight !== 'number' || (weight >= 1 && weight <= largest),
    `A weight lies between 1 and ${largest}.`,
    path,
  );
  return weight;
}
