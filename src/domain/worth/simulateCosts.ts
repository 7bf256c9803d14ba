import { compareText } from '../compareText.js';
import { seededRandom } from '../estimates/seededRandom.js';
import type { UncertainAmount } from './uncertainAmount.js';

/** One thing that money will go to. */
export interface CostLine {
  readonly id: string;
  readonly amount: UncertainAmount;
}

export interface OwnTime {
  /** Hours left, one number a trial. */
  readonly hours: Float64Array;
  /** Minor units for an hour of own time. */
  readonly ratePerHour: number;
}

export interface CostTrials {
  /** Minor units of all lines together, one number a trial; own time is not in it. */
  readonly money: Float64Array;
  /** The same and own time at its rate. */
  readonly withOwnTime: Float64Array;
  /** Each line's own trials, by id. */
  readonly rows: ReadonlyMap<string, Float64Array>;
  /** Mean and variance of `money` by formula, without trials. */
  readonly analytic: { readonly mean: number; readonly variance: number };
}

/**
 * Cost to come by seeded trials. Lines are independent of one another and of the hours; each draws
 * from a stream of its own, seeded by `seed` and its id, so that a further line changes no other's
 * draws and the order of lines changes nothing.
 *
 * @throws RangeError when two lines have one id or the trials do not match those of the hours.
 */
export function simulateCosts(
  lines: readonly CostLine[],
  ownTime: OwnTime | null,
  { seed, trials }: { readonly seed: string; readonly trials: number },
): CostTrials {
  if (ownTime !== null && ownTime.hours.length !== trials) {
    throw new RangeError('Hours and money must have the same number of trials.');
  }
  const money = new Float64Array(trials);
  const rows = new Map<string, Float64Array>();
  for (const { id, amount } of [...lines].sort((a, b) => compareText(a.id, b.id))) {
    if (rows.has(id)) throw new RangeError(`Cost ${id} is listed twice.`);
    const row = new Float64Array(trials);
    if (amount.variance === 0) row.fill(amount.mean);
    else {
      seededRandom(`${seed}\u0002${id}`).fill(row);
      for (let trial = 0; trial < trials; trial += 1) row[trial] = amount.at(row[trial]!);
    }
    for (let trial = 0; trial < trials; trial += 1) money[trial]! += row[trial]!;
    rows.set(id, row);
  }
  const withOwnTime = money.slice();
  if (ownTime !== null) {
    for (let trial = 0; trial < trials; trial += 1) {
      withOwnTime[trial]! += ownTime.hours[trial]! * ownTime.ratePerHour;
    }
  }
  return {
    money,
    withOwnTime,
    rows,
    analytic: {
      mean: lines.reduce((sum, { amount }) => sum + amount.mean, 0),
      variance: lines.reduce((sum, { amount }) => sum + amount.variance, 0),
    },
  };
}
