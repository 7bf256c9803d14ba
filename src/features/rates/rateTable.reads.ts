import type { RowSource } from '../../db/rowSource.js';
import type { ExchangeRate } from '../../domain/money/exchangeRate.js';
import type { RateTable } from '../../domain/money/sumInCurrency.js';
import { currencyExponent } from '../money/currencyExponent.js';

/** Decimals of a currency; one that ISO 4217 does not list is never kept. */
export const exponentOf = (currency: string): number => currencyExponent(currency) ?? 2;

export type NamedRate = ExchangeRate & { source: string };

/** Every rate in use, for sums as of a day: a collector's few, or a bank's of some years. */
export async function readRateTable(
  { rows }: RowSource,
  day: string,
): Promise<RateTable & { rates: readonly NamedRate[] }> {
  const rates = await rows<NamedRate>(
    `SELECT id AS "id", from_currency AS "fromCurrency", to_currency AS "toCurrency",
       rated_on AS "ratedOn", rate AS "rate", source AS "source"
     FROM exchange_rate WHERE struck_at IS NULL AND rated_on <= ?`,
    [day],
  );
  return { rates, day, exponentOf };
}

const quoted = ({ fromCurrency, toCurrency, rate, ratedOn }: ExchangeRate): string =>
  `1 ${fromCurrency} = ${rate} ${toCurrency} on ${ratedOn}`;

/** A rate named in a sentence, as bases do: whoever asks can find the record. */
export const rateInWords = (rate: ExchangeRate): string =>
  `${quoted(rate)} (ExchangeRate_${rate.id}).`;

/** The same for a paper, whose reader has the source alone. */
export const rateOnPaper = (rate: ExchangeRate): string =>
  rate.source === undefined ? `${quoted(rate)}.` : `${quoted(rate)} (${rate.source}).`;
