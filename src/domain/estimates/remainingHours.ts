import type { TaskState } from '../taskState.js';
import { estimateProblems } from './estimateProblems.js';
import { lognormalResidual } from './lognormalResidual.js';
import { pertBeta } from './pertBeta.js';
import { pertMoments } from './pertMoments.js';
import { pertShape } from './pertShape.js';
import type { SeededRandom } from './seededRandom.js';
import type { ThreePointEstimate } from './threePointEstimate.js';

export interface EstimatedWork {
  readonly state: TaskState;
  /** What the whole task may take, from its start. */
  readonly estimate: ThreePointEstimate;
  /** Hours already given to the task. */
  readonly spentHours: number;
}

/** How many hours are left on a task, as a distribution. */
export interface RemainingHours {
  /** FINISHED: nothing left. REFUTED: the pessimistic figure has been passed. */
  readonly kind: 'FINISHED' | 'WITHIN_ESTIMATE' | 'REFUTED';
  readonly meanHours: number;
  /** Square hours. */
  readonly varianceHours: number;
  /** One possible number of hours left; above 0 for every unfinished task. */
  draw(random: SeededRandom): number;
}

/**
 * The least coefficient of variation. An estimate that has been passed was wrong, however narrow it
 * was; below this spread the tail would say that next to nothing is left. Our own choice, no source.
 */
export const LEAST_VARIATION_OF_A_REFUTED_ESTIMATE = 0.25;

/**
 * What is left of a task, given that the hours spent so far did not finish it: X - spent, where X
 * is the PERT beta of the estimate given X > spent. Once `spentHours` reaches the pessimistic
 * figure the estimate is refuted; what is left is then the tail of the lognormal of the estimate's
 * mean and variance, which has no end.
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

  const { optimisticHours, pessimisticHours } = estimate;
  if (spentHours >= pessimisticHours) {
    const { meanHours, exactVarianceHours } = pertMoments(estimate);
    const variation = Math.max(
      LEAST_VARIATION_OF_A_REFUTED_ESTIMATE,
      Math.sqrt(exactVarianceHours) / meanHours,
    );
    return { kind: 'REFUTED', ...lognormalResidual(meanHours, variation, spentHours) };
  }

  const shape = pertShape(estimate);
  if (shape === null) return certain('WITHIN_ESTIMATE', pessimisticHours - spentHours);

  const rangeHours = pessimisticHours - optimisticHours;
  const sureHours = Math.max(0, optimisticHours - spentHours);
  const leftFraction =
    spentHours <= optimisticHours ? 1 : (pessimisticHours - spentHours) / rangeHours;
  const left = pertBeta(shape, leftFraction);
  return {
    kind: 'WITHIN_ESTIMATE',
    meanHours: sureHours + rangeHours * left.meanFraction,
    varianceHours: rangeHours ** 2 * left.varianceFraction,
    draw: (random) => sureHours + rangeHours * left.quantile(random.nextUniform()),
  };
}

function certain(kind: RemainingHours['kind'], hours: number): RemainingHours {
  return { kind, meanHours: hours, varianceHours: 0, draw: () => hours };
}
