import type { GraphQLResolveInfo } from 'graphql';
import { GraphQLLocalDate } from 'graphql-scalars';
import { Arg, Args, Ctx, Info, Mutation, Query, Resolver } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { argumentProblem } from '../../api/kit/argumentProblem.js';
import { carryOut } from '../../api/kit/carryOut.js';
import { MoneyInput } from '../../api/kit/money.type.js';
import { PageArgs } from '../../api/kit/pageArgs.js';
import { payloadOf } from '../../api/kit/payloadOf.js';
import { rootPage } from '../../api/kit/rootPage.js';
import { parseAmount } from '../../domain/money/parseAmount.js';
import { indexedAmount } from '../../domain/worth/indexedAmount.js';
import { moneyAmount } from '../money/moneyAmount.js';
import { exponentOf } from '../rates/rateTable.reads.js';
import { shownBasis } from '../standing/standingFacts.js';
import { changeIndex } from './changeIndex.js';
import { importIndex } from './importIndex.js';
import { indexInWords } from './indexInWords.js';
import { ChangeIndexInput, ImportIndexInput } from './priceIndex.inputs.js';
import { priceIndexReads } from './priceIndex.reads.js';
import { IndexedMoney, PriceIndex, PriceIndexConnection } from './priceIndex.type.js';
import { readPriceIndexes } from './priceIndexes.reads.js';

const ImportIndexPayload = payloadOf(
  'importIndex',
  'priceIndex',
  () => PriceIndex,
  'The index as loaded.',
);

const ChangeIndexPayload = payloadOf(
  'changeIndex',
  'priceIndex',
  () => PriceIndex,
  'It as it is now.',
);
const asIndex = { field: 'priceIndex', typeName: 'PriceIndex' };

@Resolver()
export class PriceIndexResolver {
  @Query(() => PriceIndexConnection, {
    description:
      'Price indexes that the owner loaded, the newest first; struck ones with `struckAt`. For each currency the newest that is not struck is used.',
  })
  priceIndexes(
    @Args() args: PageArgs,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    const { table, columns } = priceIndexReads;
    return rootPage(context, info, args, {
      typeName: 'PriceIndex',
      from: table,
      table,
      columns,
      sortBy: 'price_index.recorded_at',
      direction: 'DESC',
    });
  }

  @Query(() => IndexedMoney, {
    nullable: true,
    description:
      'An amount of one day in the money of another, by the price index of its currency; null when there is none, or it does not reach back.',
  })
  async indexedMoney(
    @Arg('amount', () => MoneyInput, { description: 'The amount.' }) money: MoneyInput,
    @Arg('fromDay', () => GraphQLLocalDate, { description: 'The day that it is of.' })
    fromDay: string,
    @Arg('toDay', () => GraphQLLocalDate, { nullable: true, description: 'Today if left out.' })
    toDay: string | null | undefined,
    @Ctx() { database, nowMs }: ApiContext,
  ) {
    const index = (await readPriceIndexes(database.reader)).get(money.currency);
    if (!index) return null;
    const parsed = parseAmount(money.amount, exponentOf(money.currency));
    if (parsed.kind === 'refused') throw argumentProblem(parsed.why);
    const to = toDay ?? new Date(nowMs).toISOString().slice(0, 10);
    const indexed = indexedAmount(parsed.minorUnits, fromDay, to, index.points);
    if (indexed === null) return null;
    return {
      amount: moneyAmount(indexed.minorUnits, money.currency),
      index: index.name,
      basis: shownBasis(
        {
          method:
            'Amount × index of the later period ÷ index of the earlier one, rounded once; the month if the index has it, else the year, else the last period before.',
          counted: [{ what: 'points of the index', count: index.points.length }],
        },
        nowMs,
        [indexInWords(index, indexed)],
      ),
    };
  }

  @Mutation(() => ImportIndexPayload, {
    description: 'Loads a price index; from then on it carries value notes of its currency.',
  })
  importIndex(
    @Arg('input', () => ImportIndexInput, { description: 'The index.' }) input: ImportIndexInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asIndex, (work) => importIndex(work, input));
  }

  @Mutation(() => ChangeIndexPayload, {
    description: 'Renames a price index, or strikes out one that was loaded by mistake.',
  })
  changeIndex(
    @Arg('input', () => ChangeIndexInput, { description: 'The change.' }) input: ChangeIndexInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asIndex, (work) => changeIndex(work, input));
  }
}
