import { Ctx, Query, Resolver } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { sumInCurrency } from '../../domain/money/sumInCurrency.js';
import { balanceDays, yearEnd } from '../../domain/worth/yearlyBooks.js';
import { shownSum } from '../rates/shownSum.js';
import { shownBasis } from '../standing/standingFacts.js';
import { openMoneyScale } from '../worth/moneyScale.js';
import { readBookedItems } from './booked.reads.js';
import { Books } from './books.type.js';
import { disposalResults } from './disposalResults.js';

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
    return {
      currency,
      years: days.map((day) => {
        const { heldCount, valuedCount, costs, worths } = yearEnd(items, day);
        const sum = (amounts: typeof costs) => {
          const told = sumInCurrency(amounts, currency, { ...table, day });
          return shownSum(told, amounts.length, nowMs);
        };
        return { day, heldCount, valuedCount, cost: sum(costs), worth: sum(worths) };
      }),
      disposals: await disposalResults(database.reader, currency, nowMs),
      basis: shownBasis(
        {
          method:
            'At the end of each year: what the items then held had cost by then (their parts of lots, expenses), against the newest fair-market value noted up to then, of the item or else of its model at the condition it is in now. Values stand as noted; each year by its own rates.',
          counted: [{ what: 'items ever held', count: items.length }],
        },
        nowMs,
        ['Items without a value are held at cost and not at worth: compare their counts.'],
      ),
    };
  }
}
