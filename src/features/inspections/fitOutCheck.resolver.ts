import type { GraphQLResolveInfo } from 'graphql';
import { Arg, Ctx, FieldResolver, Info, Mutation, Resolver, Root } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { carryOut } from '../../api/kit/carryOut.js';
import { loadedField } from '../../api/kit/loadRelations.js';
import { payloadOf } from '../../api/kit/payloadOf.js';
import { FitOutPosition } from '../models/fitOutPosition.type.js';
import { changeFitOutCheck } from './changeFitOutCheck.js';
import { FitOutCheck } from './fitOutCheck.type.js';
import { ChangeFitOutCheckInput } from './inspection.inputs.js';
import { Inspection } from './inspection.type.js';

const asCheck = { field: 'fitOutCheck', typeName: 'FitOutCheck' };
const ChangeFitOutCheckPayload = payloadOf(
  'changeFitOutCheck',
  'fitOutCheck',
  () => FitOutCheck,
  'The check as it is now.',
);

@Resolver(() => FitOutCheck)
export class FitOutCheckResolver {
  @FieldResolver(() => FitOutPosition, { description: 'The position that was looked at.' })
  position(@Root() check: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(check, info);
  }

  @FieldResolver(() => Inspection, { description: 'The inspection that it belongs to.' })
  inspection(@Root() check: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(check, info);
  }

  @Mutation(() => ChangeFitOutCheckPayload, {
    description: 'Corrects a position that was checked off wrongly.',
  })
  changeFitOutCheck(
    @Arg('input', () => ChangeFitOutCheckInput, { description: 'The correction.' })
    input: ChangeFitOutCheckInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asCheck, (work) => changeFitOutCheck(work, input));
  }
}
