import type { GraphQLResolveInfo } from 'graphql';
import { GraphQLCurrency, GraphQLLocalDate } from 'graphql-scalars';
import { Arg, Args, Ctx, ID, Info, Mutation, Query, Resolver } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { argumentProblem, readArguments } from '../../api/kit/argumentProblem.js';
import { carryOut } from '../../api/kit/carryOut.js';
import { carryOutMany } from '../../api/kit/carryOutMany.js';
import { recordId } from '../../api/kit/globalId.js';
import { MoneyInput } from '../../api/kit/money.type.js';
import { PageArgs } from '../../api/kit/pageArgs.js';
import { payloadOf } from '../../api/kit/payloadOf.js';
import { rootPage } from '../../api/kit/rootPage.js';
import { exchangeRateReads } from './exchangeRate.reads.js';
import { ConvertedSum, ExchangeRate, ExchangeRateConnection } from './exchangeRate.type.js';
import { importRates } from './importRates.js';
import { ImportRatesInput, SetRateInput } from './rate.inputs.js';
import { setRate } from './setRate.js';
import { sumOfInputs } from './sumOfInputs.js';

const SetRatePayload = payloadOf('setRate', 'exchangeRate', () => ExchangeRate, 'The rate.');
const ImportRatesPayload = payloadOf(
  'importRates',
  'exchangeRates',
  () => [ExchangeRate],
  'The rates that are new or changed.',
);

@Resolver()
export class RatesResolver {
  @Query(() => ExchangeRateConnection, { description: 'Exchange rates, the newest day first.' })
  exchangeRates(
    @Args() args: PageArgs,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    const { table, columns } = exchangeRateReads;
    return rootPage(context, info, args, {
      typeName: 'ExchangeRate',
      from: table,
      table,
      columns,
      sortBy: 'exchange_rate.rated_on',
      direction: 'DESC',
    });
  }

  @Query(() => ConvertedSum, {
    description:
      'Amounts added up in one currency: by one named rate, or by the newest up to a day. Without a rate there is no sum.',
  })
  sumOfMoney(
    @Arg('amounts', () => [MoneyInput], { description: 'From 1 to 1,000 amounts.' })
    amounts: MoneyInput[],
    @Arg('currency', () => GraphQLCurrency, { description: 'The currency of the sum.' })
    currency: string,
    @Arg('rateId', () => ID, {
      nullable: true,
      description: 'The one rate that may be used; left out: the newest of each pair.',
    })
    rateId: string | null | undefined,
    @Arg('on', () => GraphQLLocalDate, {
      nullable: true,
      description: 'Rates up to this day; today if left out.',
    })
    on: string | null | undefined,
    @Ctx() context: ApiContext,
  ) {
    if (amounts.length < 1 || amounts.length > 1000) {
      throw argumentProblem('Give from 1 to 1,000 amounts.');
    }
    const id =
      typeof rateId === 'string'
        ? readArguments(() => recordId('ExchangeRate', rateId, ['rateId']))
        : null;
    return sumOfInputs(context, amounts, currency, id, on ?? null);
  }

  @Mutation(() => SetRatePayload, { description: 'Writes down an exchange rate of a day.' })
  setRate(
    @Arg('input', () => SetRateInput, { description: 'The rate.' }) input: SetRateInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    const asRate = { field: 'exchangeRate', typeName: 'ExchangeRate' };
    return carryOut(context, info, asRate, (work) => setRate(work, input));
  }

  @Mutation(() => ImportRatesPayload, { description: 'Brings in a table of exchange rates.' })
  importRates(
    @Arg('input', () => ImportRatesInput, { description: 'The table.' }) input: ImportRatesInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    const asRates = { field: 'exchangeRates', typeName: 'ExchangeRate' };
    return carryOutMany(context, info, asRates, (work) => importRates(work, input));
  }
}
