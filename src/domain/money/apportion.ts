import { weightProblems } from './weightProblems.js';

/**
 * Spreads a whole number of minor units in proportion to the weights, to the last unit: every part
 * is its ideal share rounded down, and what is left over goes, one unit each, to the parts with the
 * largest remainders. Equal remainders: the earlier in the list goes first. A negative total (a
 * refund) is spread as its positive twin with the sign turned.
 *
 * Method: A. Hamilton's (largest remainder), checked in tests/published/apportion.test.ts.
 * @param weights whole numbers above zero, of any size as bigint
 * @throws RangeError naming the first fault; `weightProblems` tells them all beforehand
 */
export function apportion(
  totalMinorUnits: number,
  weights: readonly (number | bigint)[],
): number[] {
  if (!Number.isSafeInteger(totalMinorUnits)) {
    throw new RangeError('The amount to spread must be a whole number of minor units.');
  }
  const fault = weightProblems(weights)[0];
  if (fault !== undefined) throw new RangeError(fault.message);

  const total = BigInt(Math.abs(totalMinorUnits));
  const exactWeights = weights.map(BigInt);
  const weightSum = exactWeights.reduce((sum, weight) => sum + weight, 0n);
  const shares = exactWeights.map((weight, index) => ({
    index,
    floor: (total * weight) / weightSum,
    remainder: (total * weight) % weightSum,
  }));
  const leftOver = Number(total - shares.reduce((sum, share) => sum + share.floor, 0n));
  const favoured = new Set(
    [...shares]
      .sort((left, right) => compare(right.remainder, left.remainder) || left.index - right.index)
      .slice(0, leftOver)
      .map((share) => share.index),
  );
  const sign = totalMinorUnits < 0 ? -1n : 1n;
  return shares.map((share) =>
    Number(sign * (share.floor + (favoured.has(share.index) ? 1n : 0n))),
  );
}

function compare(left: bigint, right: bigint): number {
  return left < right ? -1 : left > right ? 1 : 0;
}
