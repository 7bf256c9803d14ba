import { Ctx, Query, Resolver } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import type { Money } from '../../domain/money/money.js';
import { sumInCurrency } from '../../domain/money/sumInCurrency.js';
import { balanceDays, balanceOn, lastDayOf, latestMonths } from '../../domain/worth/yearlyBooks.js';
import { readSpentByMonth } from '../ceilings/spending.reads.js';
import { shownSum } from '../rates/shownSum.js';
import { shownBasis } from '../standing/standingFacts.js';
import { openMoneyScale } from '../worth/moneyScale.js';
import { readBookedItems } from './booked.reads.js';
import { Books } from './books.type.js';
import { disposalResults } from './disposalResults.js';

const mostMonths = 24;

@Resolver()
export class BooksResolver {
  @Query(() => Books, {
    complexity: ({ childComplexity }) => 2000 + childComplexity,
    description: 'What the collection cost against what it is worth, by year; gains and losses.',
  })
  async books(@Ctx() context: ApiContext): Promise<Books> {
    const { nowMs, database } = context;
    const { currency, table } = await openMoneyScale(context);
    const items = await readBookedItems(database.reader);
    const today = new Date(nowMs).toISOString().slice(0, 10);
    const first = items.flatMap(({ costs }) => costs.map(({ day }) => day)).sort()[0];
    const days = first === undefined ? [] : balanceDays(first, today);
    const spending = await readSpentByMonth(database.reader);
    const firstMonth = [...spending.keys()][0];
    const sum = (amounts: readonly Money[], day: string) =>
      shownSum(sumInCurrency(amounts, currency, { ...table, day }), amounts.length, nowMs);
    return {
      currency,
      years: days.map((day) => {
        const { heldCount, valuedCount, costs, worths } = balanceOn(items, day);
        return { day, heldCount, valuedCount, cost: sum(costs, day), worth: sum(worths, day) };
      }),
      months: (firstMonth === undefined ? [] : latestMonths(firstMonth, today, mostMonths)).map(
        (month) => {
          const end = month === today.slice(0, 7) ? today : lastDayOf(month);
          const { worths } = balanceOn(items, end);
          return {
            month,
            spent: sum(spending.get(month) ?? [], end),
            worth: sum(worths, end),
          };
        },
      ),
      disposals: await disposalResults(database.reader, currency, nowMs),
      basis: shownBasis(
        {
          method:
            'At the end of each year: what the items then held had cost by then (their parts of lots, expenses), against the newest fair-market value noted up to then, of the item or else of its model at the condition it is in now. Values stand as noted; each year and month by its own rates. Spent in a month: its lots with their extra costs, and its expenses.',
          counted: [{ what: 'items ever held', count: items.length }],
        },
        nowMs,
        ['Items without a value are held at cost and not at worth: compare their counts.'],
      ),
    };
  }
}
