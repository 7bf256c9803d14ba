import type { GraphQLResolveInfo } from 'graphql';
import { FieldResolver, Info, Resolver, Root } from 'type-graphql';
import { loadedField } from '../../api/kit/loadRelations.js';
import { Fitting } from '../parts/fitting.type.js';
import { Task } from '../tasks/task.type.js';
import { StockCost, StockDraw, StockLot, StockReservation } from './stock.type.js';

@Resolver(() => StockReservation)
export class StockReservationResolver {
  @FieldResolver(() => StockLot, { description: 'The lot.' })
  lot(@Root() reservation: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(reservation, info);
  }

  @FieldResolver(() => Task, { description: 'The task that they wait for.' })
  task(@Root() reservation: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(reservation, info);
  }
}

@Resolver(() => StockDraw)
export class StockDrawResolver {
  @FieldResolver(() => StockLot, { description: 'The lot.' })
  lot(@Root() draw: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(draw, info);
  }

  @FieldResolver(() => Task, { nullable: true, description: 'The task that used them; or null.' })
  task(@Root() draw: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(draw, info);
  }

  @FieldResolver(() => StockReservation, {
    nullable: true,
    description: 'The reservation they were taken from; null: nobody had put them aside.',
  })
  reservation(@Root() draw: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(draw, info);
  }

  @FieldResolver(() => Fitting, {
    nullable: true,
    description: 'What was fitted; null where they left for another reason.',
  })
  fitting(@Root() draw: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(draw, info);
  }

  @FieldResolver(() => StockCost, {
    nullable: true,
    description: 'What they cost, at the cost of their lot; null if that is not recorded.',
  })
  cost(@Root() draw: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(draw, info);
  }
}

@Resolver(() => Task)
export class ReservationsOfTaskResolver {
  @FieldResolver(() => [StockReservation], { description: 'Spares that were put aside for it.' })
  reservations(@Root() task: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(task, info);
  }
}

@Resolver(() => Fitting)
export class DrawsOfFittingResolver {
  @FieldResolver(() => [StockDraw], {
    description:
      'What left the shelf for it, with what that cost; empty if it came from elsewhere.',
  })
  draws(@Root() fitting: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(fitting, info);
  }
}
