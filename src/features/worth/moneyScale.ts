import type { ApiContext } from '../../api/kit/apiContext.js';
import { latestRate } from '../../domain/money/latestRate.js';
import type { RateTable } from '../../domain/money/sumInCurrency.js';
import { undescribedCollection } from '../collection/undescribedCollection.js';
import { homeCurrency } from '../import/homeCurrency.js';
import { rateInWords, readRateTable } from '../rates/rateTable.reads.js';

/**
 * Carries figures that are estimates, not payments, into the currency of the collection, and
 * remembers every rate used and every rate that was missing. Payments go through `sumInCurrency`.
 */
export class MoneyScale {
  private readonly used = new Set<string>();
  private readonly missing = new Set<string>();

  constructor(
    readonly currency: string,
    readonly table: RateTable,
  ) {}

  /** Minor units of the home currency for one of another; null without a rate. */
  factor(currency: string): number | null {
    if (currency === this.currency) return 1;
    const rate = latestRate(this.table.rates, currency, this.currency, this.table.day);
    if (rate === null) {
      this.missing.add(currency);
      return null;
    }
    this.used.add(rateInWords(rate));
    const { exponentOf } = this.table;
    const decimals = 10 ** (exponentOf(this.currency) - exponentOf(currency));
    const isForward = rate.fromCurrency === currency;
    return decimals * (isForward ? Number(rate.rate) : 1 / Number(rate.rate));
  }

  /** The rates used so far, as sentences. */
  ratesInWords(): string[] {
    return [...this.used].sort();
  }

  /** One problem for each currency that figures were left out for. */
  problems() {
    return [...this.missing].sort().map((currency) => ({
      code: 'INVALID' as const,
      message: `There is no rate between ${currency} and ${this.currency}: figures in ${currency} are left out and no answer rests on them. Enter a rate with setRate.`,
      path: ['exchangeRates'],
    }));
  }

  get isComplete(): boolean {
    return this.missing.size === 0;
  }

  /** For another item or project of the same request. */
  fresh(): MoneyScale {
    return new MoneyScale(this.currency, this.table);
  }
}

export async function openMoneyScale({ database, nowMs }: ApiContext): Promise<MoneyScale> {
  const { reader } = database;
  const known = await homeCurrency((sql, parameters) => reader.rows(sql, parameters));
  const currency = known ?? undescribedCollection('UTC').homeCurrency;
  const day = new Date(nowMs).toISOString().slice(0, 10);
  return new MoneyScale(currency, await readRateTable(reader, day));
}
