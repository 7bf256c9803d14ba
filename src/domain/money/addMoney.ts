import type { Money } from './money.js';

/**
 * The sum of two amounts of one currency.
 * @throws RangeError when the currencies differ (use `sumByCurrency` where they may), or when the
 * sum leaves the whole numbers that can be kept exactly.
 */
export function addMoney(left: Money, right: Money): Money {
  if (left.currency !== right.currency) {
    throw new RangeError(
      `${left.currency} and ${right.currency} cannot be added without an exchange rate.`,
    );
  }
  const minorUnits = left.minorUnits + right.minorUnits;
  if (!Number.isSafeInteger(minorUnits)) {
    throw new RangeError(`The sum in ${left.currency} is too large to be kept exactly.`);
  }
  return { minorUnits, currency: left.currency };
}
