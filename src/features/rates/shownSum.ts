import type { ConvertedSum as DomainSum } from '../../domain/money/sumInCurrency.js';
import { moneyAmount } from '../money/moneyAmount.js';
import { shownBasis } from '../standing/standingFacts.js';
import type { ConvertedSum } from './exchangeRate.type.js';
import { rateInWords } from './rateTable.reads.js';

/** A sum across currencies as the API shows it. */
export const shownSum = (sum: DomainSum, amountCount: number, nowMs: number): ConvertedSum => ({
  total: sum.kind === 'SUM' ? moneyAmount(sum.total.minorUnits, sum.total.currency) : null,
  problems:
    sum.kind === 'SUM' ? [] : [{ code: 'INVALID', message: sum.why, path: ['exchangeRates'] }],
  basis: shownBasis(
    {
      method:
        'Each currency is added up exactly and converted once, by the newest rate up to the day; rounded to the nearest minor unit, half away from zero.',
      counted: [{ what: 'amounts', count: amountCount }],
    },
    nowMs,
    sum.kind === 'SUM' ? sum.usedRates.map(rateInWords) : [],
  ),
});
