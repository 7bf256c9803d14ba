import type { HoursLeft } from './hoursLeft.js';
import { pertBeta } from './pertBeta.js';
import type { BetaShape } from './pertShape.js';
import { pertShape } from './pertShape.js';
import type { ThreePointEstimate } from './threePointEstimate.js';

/**
 * What is left of a PERT beta number of hours, given that it exceeds the hours already spent.
 *
 * @param spentHours below the pessimistic figure, which is above the optimistic one.
 */
export function pertLeft(estimate: ThreePointEstimate, spentHours: number): HoursLeft {
  const { optimisticHours, pessimisticHours } = estimate;
  const rangeHours = pessimisticHours - optimisticHours;
  const sureHours = Math.max(0, optimisticHours - spentHours);
  const leftFraction =
    spentHours <= optimisticHours ? 1 : (pessimisticHours - spentHours) / rangeHours;
  const left = pertBeta(pertShape(estimate) as BetaShape, leftFraction);
  return {
    meanHours: sureHours + rangeHours * left.meanFraction,
    varianceHours: rangeHours ** 2 * left.varianceFraction,
    hoursAt: (probability) => sureHours + rangeHours * left.quantile(probability),
  };
}
