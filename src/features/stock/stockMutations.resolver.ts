import type { GraphQLResolveInfo } from 'graphql';
import { Arg, Ctx, Info, Mutation, Resolver } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { carryOut } from '../../api/kit/carryOut.js';
import { carryOutMany } from '../../api/kit/carryOutMany.js';
import { payloadOf } from '../../api/kit/payloadOf.js';
import { addStock } from './addStock.js';
import { changeReservation } from './changeReservation.js';
import { changeStockDraw } from './changeStockDraw.js';
import { changeStockLot } from './changeStockLot.js';
import { drawStock } from './drawStock.js';
import { reserveStock } from './reserveStock.js';
import {
  AddStockInput,
  ChangeReservationInput,
  ChangeStockDrawInput,
  ChangeStockLotInput,
  DrawStockInput,
  ReserveStockInput,
} from './stock.inputs.js';
import { StockDraw, StockLot, StockReservation } from './stock.type.js';

const asLot = { field: 'stockLot', typeName: 'StockLot' };
const lotPayload = (mutation: string, description: string) =>
  payloadOf(mutation, 'stockLot', () => StockLot, description);
const AddStockPayload = lotPayload('addStock', 'The new lot.');
const ChangeStockLotPayload = lotPayload('changeStockLot', 'The lot as it is now.');
const ReserveStockPayload = payloadOf(
  'reserveStock',
  'reservations',
  () => [StockReservation],
  'What was put aside, lot by lot.',
);
const ChangeReservationPayload = payloadOf(
  'changeReservation',
  'reservation',
  () => StockReservation,
  'The reservation as it is now.',
);
const DrawStockPayload = payloadOf(
  'drawStock',
  'draws',
  () => [StockDraw],
  'What left, lot by lot, with what it cost.',
);
const ChangeStockDrawPayload = payloadOf(
  'changeStockDraw',
  'draw',
  () => StockDraw,
  'The draw as it is now.',
);

@Resolver()
export class StockMutationsResolver {
  @Mutation(() => AddStockPayload, { description: 'Spares come to the shelf.' })
  addStock(
    @Arg('input', () => AddStockInput, { description: 'The spares.' }) input: AddStockInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asLot, (work) => addStock(work, input));
  }

  @Mutation(() => ChangeStockLotPayload, { description: 'Corrects a lot of spares.' })
  changeStockLot(
    @Arg('input', () => ChangeStockLotInput, { description: 'The correction.' })
    input: ChangeStockLotInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asLot, (work) => changeStockLot(work, input));
  }

  @Mutation(() => ReserveStockPayload, {
    description: 'Puts spares aside for a task: all that are wanted, or none.',
  })
  reserveStock(
    @Arg('input', () => ReserveStockInput, { description: 'What, and for which task.' })
    input: ReserveStockInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    const asReservations = { field: 'reservations', typeName: 'StockReservation' };
    return carryOutMany(context, info, asReservations, (work) => reserveStock(work, input));
  }

  @Mutation(() => ChangeReservationPayload, {
    description: 'Corrects a reservation, or releases what was not drawn.',
  })
  changeReservation(
    @Arg('input', () => ChangeReservationInput, { description: 'The correction.' })
    input: ChangeReservationInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    const asReservation = { field: 'reservation', typeName: 'StockReservation' };
    return carryOut(context, info, asReservation, (work) => changeReservation(work, input));
  }

  @Mutation(() => DrawStockPayload, {
    description: 'Spares leave the shelf without being fitted: all that are wanted, or none.',
  })
  drawStock(
    @Arg('input', () => DrawStockInput, { description: 'What, and why.' }) input: DrawStockInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    const asDraws = { field: 'draws', typeName: 'StockDraw' };
    return carryOutMany(context, info, asDraws, (work) => drawStock(work, input));
  }

  @Mutation(() => ChangeStockDrawPayload, { description: 'Corrects how many left a lot.' })
  changeStockDraw(
    @Arg('input', () => ChangeStockDrawInput, { description: 'The correction.' })
    input: ChangeStockDrawInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    const asDraw = { field: 'draw', typeName: 'StockDraw' };
    return carryOut(context, info, asDraw, (work) => changeStockDraw(work, input));
  }
}
