import type { MoneyInput } from '../../api/kit/money.type.js';
import type { Checklist } from '../../db/checklist.js';
import type { Money } from '../../domain/money/money.js';
import { readMoney } from '../money/readMoney.js';

/** A price that was got; what one paid to be rid of a thing is a cost. */
export function readPrice(check: Checklist, input: MoneyInput, path: string[]): Money {
  const price = readMoney(check, input, path);
  check.that(
    price.minorUnits >= 0,
    'The price is 0 or more; what it cost to be rid of it goes under the costs.',
    path,
  );
  return price;
}
