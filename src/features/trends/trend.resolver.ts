import type { GraphQLResolveInfo } from 'graphql';
import { Arg, Args, Ctx, FieldResolver, Info, Mutation, Query, Resolver, Root } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { carryOut } from '../../api/kit/carryOut.js';
import { loadedField } from '../../api/kit/loadRelations.js';
import { PageArgs } from '../../api/kit/pageArgs.js';
import { payloadOf } from '../../api/kit/payloadOf.js';
import { rootPage } from '../../api/kit/rootPage.js';
import { Item } from '../items/item.type.js';
import { Component } from '../parts/component.type.js';
import { Reading } from '../readings/reading.type.js';
import { changeInstrumentComparison } from './changeInstrumentComparison.js';
import { compareInstruments } from './compareInstruments.js';
import {
  ChangeInstrumentComparisonInput,
  CompareInstrumentsInput,
} from './instrumentComparison.inputs.js';
import { instrumentComparisonReads } from './instrumentComparison.reads.js';
import {
  InstrumentComparison,
  InstrumentComparisonConnection,
} from './instrumentComparison.type.js';
import { Trend } from './trend.type.js';

const asComparison = { field: 'comparison', typeName: 'InstrumentComparison' };
const payload = (mutation: string, description: string) =>
  payloadOf(mutation, 'comparison', () => InstrumentComparison, description);
const CompareInstrumentsPayload = payload('compareInstruments', 'The new comparison.');
const ChangeInstrumentComparisonPayload = payload(
  'changeInstrumentComparison',
  'The comparison as it is now.',
);

@Resolver(() => Trend)
export class TrendResolver {
  @FieldResolver(() => [Reading], { description: 'The readings that it rests on, oldest first.' })
  readings(@Root() trend: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(trend, info);
  }
}

@Resolver(() => Component)
export class TrendsOfComponentResolver {
  @FieldResolver(() => [Trend], { description: 'Each quantity that was read on it, over time.' })
  trends(@Root() component: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(component, info);
  }
}

@Resolver(() => Item)
export class TrendsOfItemResolver {
  @FieldResolver(() => [Trend], {
    description: 'Each quantity that was read on the set as a whole, over time.',
  })
  trends(@Root() item: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(item, info);
  }
}

@Resolver(() => InstrumentComparison)
export class InstrumentComparisonResolver {
  @Query(() => InstrumentComparisonConnection, {
    description: 'Instruments compared, by quantity.',
  })
  instrumentComparisons(
    @Args() args: PageArgs,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return rootPage(context, info, args, {
      ...instrumentComparisonReads,
      from: instrumentComparisonReads.table,
      sortBy: 'instrument_comparison.quantity',
    });
  }

  @Mutation(() => CompareInstrumentsPayload, {
    description: 'Says how two instruments compare, so that trends go on over the change.',
  })
  compareInstruments(
    @Arg('input', () => CompareInstrumentsInput, { description: 'The comparison.' })
    input: CompareInstrumentsInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asComparison, (work) => compareInstruments(work, input));
  }

  @Mutation(() => ChangeInstrumentComparisonPayload, { description: 'Corrects a comparison.' })
  changeInstrumentComparison(
    @Arg('input', () => ChangeInstrumentComparisonInput, { description: 'The correction.' })
    input: ChangeInstrumentComparisonInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asComparison, (work) => changeInstrumentComparison(work, input));
  }
}
