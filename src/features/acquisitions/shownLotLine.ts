import type { ApiContext } from '../../api/kit/apiContext.js';
import type { Basis } from '../../api/kit/basis.type.js';
import type { Row } from '../../api/kit/typeReads.js';
import type { Money } from '../../domain/money/money.js';
import { moneyAmount } from '../money/moneyAmount.js';
import type { LotLineWithShare } from './lotShares.reads.js';
import type { SpreadMethod } from './spreadMethod.js';

const weighedBy: Record<SpreadMethod, string> = {
  EQUAL_SHARES: 'The same for every line',
  STATED_SHARES: 'In proportion to the stated shares',
  STATED_VALUES: 'In proportion to the stated values',
};

/** A line of a lot as the API shows it. */
export function shownLotLine({ nowMs }: ApiContext, line: LotLineWithShare): Row {
  const shown = ({ minorUnits, currency }: Money) => moneyAmount(minorUnits, currency);
  const { statedValueMinorUnits: value, lineCount, extraCostCount } = line;
  const basis: Basis = {
    method:
      `${weighedBy[line.spreadMethod]}, to the last minor unit: what is left over goes to the ` +
      'largest remainders. Extra costs of one currency are added up before they are spread.',
    counted: [
      { what: 'lines of the lot', count: lineCount },
      { what: 'extra costs of the lot', count: extraCostCount },
    ],
    assumptions: ['Nothing is converted from one currency to another.'],
    asOf: new Date(nowMs).toISOString(),
  };
  return {
    ...line,
    statedValue: value === null ? null : moneyAmount(value, line.currency),
    price: shown(line.price),
    extras: line.extras.map(shown),
    totals: line.totals.map(shown),
    basis,
  };
}
