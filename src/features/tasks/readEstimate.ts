import { isGiven } from '../../api/kit/isGiven.js';
import type { Checklist } from '../../db/checklist.js';
import { estimateProblems } from '../../domain/estimates/estimateProblems.js';
import { estimateOf } from './estimateOf.js';
import type { EstimateInput } from './task.inputs.js';

/** An estimate in hours, as whole minutes; what is wrong with it goes to the checklist. */
export function readEstimate(check: Checklist, input: EstimateInput, path: string[]) {
  const minutes = {
    optimisticMinutes: Math.round(input.optimisticHours * 60),
    likelyMinutes: Math.round(input.likelyHours * 60),
    pessimisticMinutes: Math.round(input.pessimisticHours * 60),
  };
  const asEntered = estimateProblems(input);
  // What is above zero as entered may be nothing in whole minutes.
  const problems = asEntered.length > 0 ? asEntered : estimateProblems(estimateOf(minutes));
  for (const problem of problems) check.refuse(problem.message, [...path, ...problem.path]);
  return {
    ...minutes,
    ...(isGiven(input.distribution) && { estimateDistribution: input.distribution }),
  };
}
