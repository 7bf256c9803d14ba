import type { Checklist } from '../../db/checklist.js';
import { parseDecimal } from '../../domain/decimal/parseDecimal.js';
import { checkPastDay } from '../money/checkPastDay.js';
import { currencyExponent } from '../money/currencyExponent.js';

export interface RateDraft {
  fromCurrency: string;
  toCurrency: string;
  ratedOn: string;
  rate: string;
}

const longestRate = 40;

/** @param at where each of the fields stands in the input; `line` is said in front of a problem. */
export function checkRate(
  check: Checklist,
  draft: RateDraft,
  now: string,
  at: (field: keyof RateDraft) => string[],
  line = '',
): void {
  for (const field of ['fromCurrency', 'toCurrency'] as const) {
    check.that(
      currencyExponent(draft[field]) !== null,
      `${line}“${draft[field]}” is not a currency code of ISO 4217, such as EUR or JPY.`,
      at(field),
    );
  }
  check.that(
    draft.fromCurrency !== draft.toCurrency,
    `${line}A rate stands between two different currencies.`,
    at('toCurrency'),
  );
  const rate = draft.rate.length > longestRate ? null : parseDecimal(draft.rate);
  check.that(
    rate !== null && rate.coefficient > 0n,
    `${line}“${draft.rate.slice(0, longestRate)}” is not a rate: give a decimal above zero, such as 1.1825.`,
    at('rate'),
  );
  checkPastDay(check, draft.ratedOn, now, at('ratedOn'));
}
