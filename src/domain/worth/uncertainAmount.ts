/** An amount that is not known exactly, in minor units of one currency. */
export interface UncertainAmount {
  readonly mean: number;
  readonly variance: number;
  /** The amount that is not exceeded with this probability, strictly between 0 and 1. */
  at(probability: number): number;
}

/** So many of the same thing, all at the one price that is not known. */
export const timesAmount = (amount: UncertainAmount, count: number): UncertainAmount => ({
  mean: amount.mean * count,
  variance: amount.variance * count ** 2,
  at: (probability) => amount.at(probability) * count,
});

/** The same amount in another currency or another year's money. */
export const certainAmount = (amount: number): UncertainAmount => ({
  mean: amount,
  variance: 0,
  at: () => amount,
});
