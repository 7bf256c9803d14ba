import type { GraphQLResolveInfo } from 'graphql';
import { Arg, Args, Ctx, FieldResolver, Info, Query, Resolver, Root } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { equalTo } from '../../api/kit/conditions.js';
import { optionalRecordId } from '../../api/kit/globalId.js';
import { loadedField } from '../../api/kit/loadRelations.js';
import { PageArgs } from '../../api/kit/pageArgs.js';
import { rootPage } from '../../api/kit/rootPage.js';
import { containsWords } from '../../db/containsWords.js';
import { LotLine } from '../acquisitions/lotLine.type.js';
import { Component } from '../parts/component.type.js';
import { PartType } from '../parts/partType.type.js';
import { Place } from '../places/place.type.js';
import { StockFilter } from './stock.inputs.js';
import {
  StockCost,
  StockDraw,
  StockLot,
  StockLotConnection,
  StockReservation,
} from './stock.type.js';
import { stockLevels } from './stockLevels.js';
import { stockLotReads } from './stockLot.reads.js';

@Resolver(() => StockLot)
export class StockLotResolver {
  @Query(() => StockLotConnection, { description: 'Lots of spares, the oldest first.' })
  stockLots(
    @Args() args: PageArgs,
    @Arg('filter', () => StockFilter, { defaultValue: { isEmpty: false }, description: 'Which.' })
    filter: StockFilter,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    const { partTypeId, placeId, text, isEmpty } = filter;
    const names = [`COALESCE(part_type.designation, '')`, `COALESCE(stock_lot.description, '')`];
    return rootPage(context, info, args, {
      ...stockLotReads,
      from: 'stock_lot LEFT JOIN part_type ON part_type.id = stock_lot.part_type_id',
      sortBy: 'stock_lot.received_on',
      where: [
        ...equalTo('stock_lot.part_type_id', optionalRecordId('PartType', partTypeId, ['filter'])),
        ...equalTo('stock_lot.place_id', optionalRecordId('Place', placeId, ['filter'])),
        ...containsWords(names, text ?? ''),
        ...(isEmpty === null || isEmpty === undefined
          ? []
          : [{ sql: `${stockLevels.onHand} ${isEmpty ? '=' : '>'} 0`, parameters: [] }]),
      ],
    });
  }

  @FieldResolver(() => PartType, {
    nullable: true,
    description: 'Their part type; null if not known.',
  })
  partType(@Root() lot: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(lot, info);
  }

  @FieldResolver(() => Component, {
    nullable: true,
    description: 'The one component that this lot is; null for spares with no record each.',
  })
  component(@Root() lot: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(lot, info);
  }

  @FieldResolver(() => Place, { nullable: true, description: 'Where they lie; null if unknown.' })
  place(@Root() lot: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(lot, info);
  }

  @FieldResolver(() => LotLine, {
    nullable: true,
    description: 'The line of the acquisition that they came with; null if none is recorded.',
  })
  lotLine(@Root() lot: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(lot, info);
  }

  @FieldResolver(() => StockCost, {
    nullable: true,
    description: 'What all of them cost together; null if not recorded.',
  })
  cost(@Root() lot: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(lot, info);
  }

  @FieldResolver(() => [StockReservation], { description: 'What was put aside for tasks.' })
  reservations(@Root() lot: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(lot, info);
  }

  @FieldResolver(() => [StockDraw], { description: 'What left, the first first.' })
  draws(@Root() lot: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(lot, info);
  }
}
