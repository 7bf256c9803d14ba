import { outcomesOf, salvageOf, type Prospects } from './outcomes.js';
import type { Standard } from './standards.js';
import { valueOfInformation, type Payoffs } from './valueOfInformation.js';

/** Something of the cost to come that could be known beforehand. */
export interface CostInQuestion {
  /** Minor units, one a trial. */
  readonly trials: Float64Array;
  /** How much of it each finish bears: 1 or 0 for a part, a share for hours. */
  readonly bornBy: (standard: Standard) => number;
}

/** The most that it is worth to know one cost before choosing, all else as uncertain as it is. */
export function worthKnowingCost(prospects: Prospects, { trials, bornBy }: CostInQuestion): number {
  const mean = trials.reduce((sum, cost) => sum + cost, 0) / trials.length;
  return knowing(prospects, trials.length, null, (standard, state) => {
    return (mean - trials[state]!) * bornBy(standard);
  });
}

/** The most that it is worth to know whether finishing would succeed. */
export function worthKnowingSuccess(prospects: Prospects): number {
  const { successChance: chance, premium, finishes } = prospects;
  if (chance <= 0 || chance >= 1) return 0;
  const salvage = salvageOf(prospects);
  const stakes = new Map(
    finishes.map(({ standard, value }) => [standard, value.mean + premium - salvage]),
  );
  return knowing(prospects, 2, [chance, 1 - chance], (standard, state) => {
    const stake = stakes.get(standard) ?? 0;
    return state === 0 ? (1 - chance) * stake : -chance * stake;
  });
}

const cells = 1000;

/** The most that it is worth to know what it would bring when finished. */
export function worthKnowingValue(prospects: Prospects): number {
  const grids = new Map(
    prospects.finishes.map(({ standard, value }) => {
      const grid = Float64Array.from({ length: cells }, (_, cell) =>
        value.variance === 0 ? value.mean : value.at((cell + 0.5) / cells),
      );
      const mean = grid.reduce((sum, one) => sum + one, 0) / cells;
      return [standard, grid.map((one) => one - mean)];
    }),
  );
  return knowing(prospects, cells, null, (standard, state) => {
    return prospects.successChance * (grids.get(standard)?.[state] ?? 0);
  });
}

/** @param shift what a state adds to the expected gain of finishing to a standard; its mean is 0. */
function knowing(
  prospects: Prospects,
  states: number,
  probabilities: readonly number[] | null,
  shift: (standard: Standard, state: number) => number,
): number {
  const choices = outcomesOf(prospects).map(({ standard, gain }): Payoffs => {
    const row = new Float64Array(states).fill(gain);
    if (standard !== null) {
      for (let state = 0; state < states; state += 1) row[state]! += shift(standard, state);
    }
    return row;
  });
  return choices.length === 0 ? 0 : valueOfInformation(choices, probabilities).perfectInformation;
}
