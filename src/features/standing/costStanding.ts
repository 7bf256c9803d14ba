import { sumByCurrency } from '../../domain/money/sumByCurrency.js';
import type { Money } from '../../domain/money/money.js';
import { moneyAmount } from '../money/moneyAmount.js';
import type { CostToDate, CurrencyCost } from './costToDate.type.js';
import { shownBasis } from './standingFacts.js';

export interface CostInputs {
  /** Its part of the price of the lot it came in; null when no lot is recorded. */
  price: Money | null;
  extras: readonly Money[];
  expenses: readonly Money[];
  /** Things that were in the lot, extra costs that it had. */
  lineCount: number;
  extraCostCount: number;
}

/** An expense as read, with PostgreSQL's 64-bit numbers as text. */
export const asMoney = (row: { amount: number | string; currency: string }): Money => ({
  minorUnits: Number(row.amount),
  currency: row.currency,
});

/** What an item cost in one currency, in minor units. */
export interface CurrencySum {
  currency: string;
  price: number;
  extras: number;
  expenses: number;
  total: number;
}

export function costSums({
  price,
  extras,
  expenses,
}: Pick<CostInputs, 'price' | 'extras' | 'expenses'>): CurrencySum[] {
  const prices = price === null ? [] : [price];
  const parts = {
    price: sumByCurrency(prices),
    extras: sumByCurrency(extras),
    expenses: sumByCurrency(expenses),
  };
  return sumByCurrency([...prices, ...extras, ...expenses]).map(({ currency, minorUnits }) => {
    const of = (sums: readonly Money[]) =>
      sums.find((sum) => sum.currency === currency)?.minorUnits ?? 0;
    return {
      currency,
      price: of(parts.price),
      extras: of(parts.extras),
      expenses: of(parts.expenses),
      total: minorUnits,
    };
  });
}

/** Money to date of an item, currency by currency. */
export const costStanding = (inputs: CostInputs, nowMs: number): CostToDate => ({
  byCurrency: costSums(inputs).map(shownSum),
  basis: shownBasis(
    {
      method:
        'Its part of the lot it came in (price and extra costs, spread to the last minor unit by largest remainder), and the expenses recorded on it. Spares from the shelf are not in it (`fittedSpares`). Nothing is converted.',
      counted: [
        { what: 'things in the lot', count: inputs.lineCount },
        { what: 'extra costs of the lot', count: inputs.extraCostCount },
        { what: 'expenses', count: inputs.expenses.length },
      ],
    },
    nowMs,
    inputs.price === null ? ['No acquisition is recorded, so no price is in it.'] : [],
  ),
});

/** Money spent on a project: its expenses; what the item cost to buy belongs to the item. */
export const projectCost = (expenses: readonly Money[], nowMs: number): CostToDate => ({
  byCurrency: costSums({ price: null, extras: [], expenses }).map(shownSum),
  basis: shownBasis(
    {
      method:
        'Expenses recorded on the project. The price of the item and spares from the shelf (`fittedSpares`) are not in it. Nothing is converted.',
      counted: [{ what: 'expenses', count: expenses.length }],
    },
    nowMs,
  ),
});

const shownSum = ({ currency, price, extras, expenses, total }: CurrencySum): CurrencyCost => ({
  currency,
  price: moneyAmount(price, currency),
  extras: moneyAmount(extras, currency),
  expenses: moneyAmount(expenses, currency),
  total: moneyAmount(total, currency),
});
