import { pertBeta } from '../estimates/pertBeta.js';
import { pertMoments } from '../estimates/pertMoments.js';
import { pertShape } from '../estimates/pertShape.js';
import { certainAmount, type UncertainAmount } from './uncertainAmount.js';

/** What something may cost, in minor units: if all goes well, most likely, if little does. */
export interface ThreePointAmount {
  readonly optimistic: number;
  readonly likely: number;
  readonly pessimistic: number;
}

/** Three points read as the PERT beta, as estimates of hours are. */
export function threePointAmount(points: ThreePointAmount): UncertainAmount {
  const { optimistic, likely, pessimistic } = points;
  if (!(optimistic <= likely && likely <= pessimistic)) {
    throw new RangeError('The three points of a cost must rise.');
  }
  const estimate = {
    optimisticHours: optimistic,
    likelyHours: likely,
    pessimisticHours: pessimistic,
  };
  const shape = pertShape(estimate);
  if (shape === null) return certainAmount(likely);
  const { meanHours, exactVarianceHours } = pertMoments(estimate);
  const beta = pertBeta(shape);
  return {
    mean: meanHours,
    variance: exactVarianceHours,
    at: (probability) => optimistic + (pessimistic - optimistic) * beta.quantile(probability),
  };
}
