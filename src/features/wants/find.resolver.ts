import type { GraphQLResolveInfo } from 'graphql';
import { Arg, Ctx, FieldResolver, Info, Mutation, Resolver, Root } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { carryOut } from '../../api/kit/carryOut.js';
import { loadedField } from '../../api/kit/loadRelations.js';
import { payloadOf } from '../../api/kit/payloadOf.js';
import { Acquisition } from '../acquisitions/acquisition.type.js';
import { StockLot } from '../stock/stock.type.js';
import { RecordFindInput } from './find.inputs.js';
import { recordFind } from './recordFind.js';
import { Find, Want } from './want.type.js';

const asFind = { field: 'find', typeName: 'Find' };
const RecordFindPayload = payloadOf('recordFind', 'find', () => Find, 'The purchase.');

@Resolver(() => Find)
export class FindResolver {
  @FieldResolver(() => Want, { nullable: true, description: 'What was wanted; null if nothing.' })
  want(@Root() find: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(find, info);
  }

  @FieldResolver(() => Acquisition, { description: 'The acquisition that it became.' })
  acquisition(@Root() find: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(find, info);
  }

  @FieldResolver(() => StockLot, { description: 'The spares that it brought.' })
  stockLot(@Root() find: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(find, info);
  }

  @Mutation(() => RecordFindPayload, {
    description:
      'A purchase at a fair becomes an acquisition and spares on the shelf, put aside for the task that waits. Sent again, it changes nothing.',
  })
  recordFind(
    @Arg('input', () => RecordFindInput, { description: 'The purchase.' }) input: RecordFindInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asFind, (work) => recordFind(work, input));
  }
}
