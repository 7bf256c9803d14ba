export interface WeightProblem {
  /** Place in the list, from 0; null when the list as a whole is at fault. */
  readonly index: number | null;
  readonly message: string;
}

/** What keeps an amount from being spread by these weights; all problems at once, empty if none. */
export function weightProblems(weights: readonly (number | bigint)[]): WeightProblem[] {
  if (weights.length === 0) {
    return [{ index: null, message: 'There is nothing to spread the amount over.' }];
  }
  if (weights.every((weight) => Number(weight) === 0)) {
    return [{ index: null, message: 'All shares are zero: give at least one a share above zero.' }];
  }
  return weights.flatMap((weight, index) => {
    const message = weightProblem(weight);
    return message === null ? [] : [{ index, message: `Share ${index + 1}: ${message}` }];
  });
}

function weightProblem(weight: number | bigint): string | null {
  if (typeof weight === 'number' && !Number.isSafeInteger(weight)) {
    return 'a share must be a whole number; multiply all shares by the same factor.';
  }
  if (weight < 0) return 'a share cannot be negative.';
  if (Number(weight) === 0)
    return 'a share of zero gets nothing; leave it out or give it a share above zero.';
  return null;
}
