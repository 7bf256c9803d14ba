import type { ApiContext } from '../../api/kit/apiContext.js';
import { argumentProblem } from '../../api/kit/argumentProblem.js';
import type { MoneyInput } from '../../api/kit/money.type.js';
import type { Money } from '../../domain/money/money.js';
import { parseAmount } from '../../domain/money/parseAmount.js';
import { sumInCurrency } from '../../domain/money/sumInCurrency.js';
import { currencyExponent } from '../money/currencyExponent.js';
import { readRateTable } from './rateTable.reads.js';
import { shownSum } from './shownSum.js';

/** Amounts of a query in one currency. @param rateId the one rate that may be used; null: any. */
export async function sumOfInputs(
  { database, nowMs }: ApiContext,
  amounts: readonly MoneyInput[],
  currency: string,
  rateId: string | null,
  on: string | null,
) {
  const day = on ?? new Date(nowMs).toISOString().slice(0, 10);
  const table = await readRateTable(database.reader, day);
  const rates = rateId === null ? table.rates : table.rates.filter(({ id }) => id === rateId);
  if (rateId !== null && rates.length === 0) {
    throw argumentProblem(`There is no such rate in use up to ${day}.`);
  }
  exponent(currency);
  try {
    const sum = sumInCurrency(amounts.map(moneyOf), currency, { ...table, rates });
    return shownSum(sum, amounts.length, nowMs);
  } catch (error) {
    if (error instanceof RangeError) throw argumentProblem(error.message);
    throw error;
  }
}

function moneyOf({ amount, currency }: MoneyInput): Money {
  const parsed = parseAmount(amount, exponent(currency));
  if (parsed.kind === 'refused') throw argumentProblem(parsed.why);
  return { minorUnits: parsed.minorUnits, currency };
}

function exponent(currency: string): number {
  const decimals = currencyExponent(currency);
  if (decimals === null) throw argumentProblem(`"${currency}" is not a currency of ISO 4217.`);
  return decimals;
}
