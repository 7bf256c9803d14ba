/**
 * What some units of a lot cost when the whole lot has one price. Units are numbered in the order in
 * which they leave. Each unit's cost is the difference of two running totals rounded down, so that
 * the parts of a lot that has left entirely add up to its price to the last minor unit, however the
 * units were drawn. Costing first in, first out: common practice, no source.
 *
 * @param totalMinorUnits price of the whole lot, zero or more
 * @param lotUnits how many units the lot held, one or more
 * @param unitsBefore how many left before these
 * @param units how many these are
 * @throws RangeError when the units are not all in the lot, or a number is no whole number
 */
export function costOfUnits(
  totalMinorUnits: number,
  lotUnits: number,
  unitsBefore: number,
  units: number,
): number {
  const numbers = [totalMinorUnits, lotUnits, unitsBefore, units];
  if (!numbers.every((number) => Number.isSafeInteger(number) && number >= 0)) {
    throw new RangeError('Price and units must be whole numbers, zero or more.');
  }
  if (lotUnits === 0 || unitsBefore + units > lotUnits) {
    throw new RangeError(`A lot of ${lotUnits} does not hold units up to ${unitsBefore + units}.`);
  }
  const upTo = (unit: number): bigint =>
    (BigInt(totalMinorUnits) * BigInt(unit)) / BigInt(lotUnits);
  return Number(upTo(unitsBefore + units) - upTo(unitsBefore));
}
