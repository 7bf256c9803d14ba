import type { Checklist } from '../../db/checklist.js';
import { apportion } from '../../domain/money/apportion.js';
import type { Money } from '../../domain/money/money.js';
import type { DisposalLineInput } from './disposal.inputs.js';
import { readPrice } from './readPrice.js';

/** What falls to each line of the price, in minor units: as stated, or in equal shares. */
export function disposalShares(
  check: Checklist,
  inputs: readonly DisposalLineInput[],
  price: Money,
): readonly number[] {
  const stated = inputs.filter((line) => line.price);
  if (stated.length === 0)
    return apportion(
      price.minorUnits,
      inputs.map(() => 1),
    );
  check.that(stated.length === inputs.length, 'Give a price for every line, or for none.', [
    'lines',
  ]);
  const prices = inputs.map((line, index) => {
    const path = ['lines', String(index), 'price'];
    const own = line.price ? readPrice(check, line.price, path) : null;
    check.that(
      own === null || own.currency === price.currency,
      `Give it in ${price.currency}.`,
      path,
    );
    return own?.minorUnits ?? 0;
  });
  const sum = prices.reduce((total, one) => total + one, 0);
  check.that(
    stated.length < inputs.length || sum === price.minorUnits,
    'The prices of the lines do not add up to the price of the lot.',
    ['lines'],
  );
  return prices;
}
