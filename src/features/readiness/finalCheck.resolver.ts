import type { GraphQLResolveInfo } from 'graphql';
import { Arg, Args, Ctx, FieldResolver, Info, Mutation, Resolver, Root } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { carryOut } from '../../api/kit/carryOut.js';
import { loadedField } from '../../api/kit/loadRelations.js';
import { PageArgs } from '../../api/kit/pageArgs.js';
import { payloadOf } from '../../api/kit/payloadOf.js';
import { Item } from '../items/item.type.js';
import { Party } from '../parties/party.type.js';
import { changeFinalCheck } from './changeFinalCheck.js';
import { ChangeFinalCheckInput, RecordFinalCheckInput } from './finalCheck.inputs.js';
import { FinalCheck, FinalCheckConnection } from './finalCheck.type.js';
import { recordFinalCheck } from './recordFinalCheck.js';

const asFinalCheck = { field: 'finalCheck', typeName: 'FinalCheck' };
const finalCheckPayload = (mutation: string, description: string) =>
  payloadOf(mutation, 'finalCheck', () => FinalCheck, description);
const RecordFinalCheckPayload = finalCheckPayload('recordFinalCheck', 'The check as kept.');
const ChangeFinalCheckPayload = finalCheckPayload('changeFinalCheck', 'The check as it is now.');

@Resolver(() => FinalCheck)
export class FinalCheckResolver {
  @FieldResolver(() => Item, { description: 'The rig or accessory that was checked.' })
  item(@Root() check: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(check, info);
  }

  @FieldResolver(() => Party, { nullable: true, description: 'Who did it; null if unrecorded.' })
  checkedBy(@Root() check: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(check, info);
  }

  @Mutation(() => RecordFinalCheckPayload, {
    description: 'Writes down a check done before a set goes on the air, passed or not.',
  })
  recordFinalCheck(
    @Arg('input', () => RecordFinalCheckInput, { description: 'The check.' })
    input: RecordFinalCheckInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asFinalCheck, (work) => recordFinalCheck(work, input));
  }

  @Mutation(() => ChangeFinalCheckPayload, { description: 'Corrects a final check.' })
  changeFinalCheck(
    @Arg('input', () => ChangeFinalCheckInput, { description: 'The correction.' })
    input: ChangeFinalCheckInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asFinalCheck, (work) => changeFinalCheck(work, input));
  }
}

@Resolver(() => Item)
export class ItemFinalChecksResolver {
  @FieldResolver(() => FinalCheckConnection, { description: 'Final checks, the latest first.' })
  finalChecks(@Root() item: object, @Args() _args: PageArgs, @Info() info: GraphQLResolveInfo) {
    return loadedField(item, info);
  }
}
