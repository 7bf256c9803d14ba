import type { TaskState } from '../taskState.js';
import { estimateProblems } from './estimateProblems.js';
import type { HoursLeft } from './hoursLeft.js';
import { lognormalResidual } from './lognormalResidual.js';
import { pertLeft } from './pertLeft.js';
import { pertMoments } from './pertMoments.js';
import type { ThreePointEstimate } from './threePointEstimate.js';
import { triangularLeft } from './triangularLeft.js';

export interface EstimatedWork {
  readonly state: TaskState;
  /** What the whole task may take, from its start. */
  readonly estimate: ThreePointEstimate;
  /** Hours already given to the task. */
  readonly spentHours: number;
}

/** How many hours are left on a task, as a distribution; always above 0 for an unfinished one. */
export interface RemainingHours extends HoursLeft {
  /** FINISHED: nothing left. REFUTED: the pessimistic figure has been passed. */
  readonly kind: 'FINISHED' | 'WITHIN_ESTIMATE' | 'REFUTED';
}

/**
 * The least coefficient of variation. An estimate that has been passed was wrong, however narrow it
 * was; below this spread the tail would say that next to nothing is left. Our own choice, no source.
 */
export const LEAST_VARIATION_OF_A_REFUTED_ESTIMATE = 0.25;

/**
 * What is left of a task, given that the hours spent so far did not finish it: X - spent, where X
 * is the estimate's distribution given X > spent. Once `spentHours` reaches the pessimistic figure
 * the estimate is refuted; what is left is then the tail of the lognormal of the estimate's mean
 * and variance, which has no end.
 *
 * @throws RangeError when the estimate has problems or the hours spent are not a number from 0 up.
 */
export function remainingHours(work: EstimatedWork): RemainingHours {
  const { state, estimate, spentHours } = work;
  const [problem] = estimateProblems(estimate);
  if (problem !== undefined) throw new RangeError(problem.message);
  if (!(spentHours >= 0 && spentHours < Infinity)) {
    throw new RangeError('The hours spent on a task must be a number from 0 up.');
  }
  if (state === 'DONE' || state === 'DROPPED') return certain('FINISHED', 0);

  const { optimisticHours, pessimisticHours, distribution = 'PERT_BETA' } = estimate;
  const { meanHours, exactVarianceHours } = pertMoments(estimate);
  const variation = Math.sqrt(exactVarianceHours) / meanHours;
  if (spentHours >= pessimisticHours) {
    const wide = Math.max(LEAST_VARIATION_OF_A_REFUTED_ESTIMATE, variation);
    return { kind: 'REFUTED', ...lognormalResidual(meanHours, wide, spentHours) };
  }
  if (optimisticHours === pessimisticHours) {
    return certain('WITHIN_ESTIMATE', pessimisticHours - spentHours);
  }
  switch (distribution) {
    case 'PERT_BETA':
      return { kind: 'WITHIN_ESTIMATE', ...pertLeft(estimate, spentHours) };
    case 'TRIANGULAR':
      return { kind: 'WITHIN_ESTIMATE', ...triangularLeft(estimate, spentHours) };
    case 'LOGNORMAL':
      return { kind: 'WITHIN_ESTIMATE', ...lognormalResidual(meanHours, variation, spentHours) };
  }
}

function certain(kind: RemainingHours['kind'], hours: number): RemainingHours {
  return { kind, meanHours: hours, varianceHours: 0, hoursAt: () => hours };
}
