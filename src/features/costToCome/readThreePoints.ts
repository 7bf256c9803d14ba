import type { Checklist } from '../../db/checklist.js';
import { readSpent } from '../money/readSpent.js';
import type { ThreePointMoneyInput } from './plannedCost.inputs.js';

/** Three rising amounts of one currency; what is wrong goes to the checklist. */
export function readThreePoints(check: Checklist, input: ThreePointMoneyInput, path: string[]) {
  const read = (name: keyof ThreePointMoneyInput) =>
    readSpent(check, input[name], [...path, name], 'A cost is 0 or more.');
  const [optimistic, likely, pessimistic] = [
    read('optimistic'),
    read('likely'),
    read('pessimistic'),
  ];
  const { currency } = likely;
  check.that(
    optimistic.currency === currency && pessimistic.currency === currency,
    'All three are in one currency.',
    path,
  );
  check.that(
    optimistic.minorUnits <= likely.minorUnits && likely.minorUnits <= pessimistic.minorUnits,
    'Optimistic, likely and pessimistic must rise.',
    path,
  );
  return {
    optimisticMinorUnits: optimistic.minorUnits,
    likelyMinorUnits: likely.minorUnits,
    pessimisticMinorUnits: pessimistic.minorUnits,
    currency,
  };
}
