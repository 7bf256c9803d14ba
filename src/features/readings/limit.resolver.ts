import type { GraphQLResolveInfo } from 'graphql';
import { Arg, Ctx, ID, Info, Mutation, Resolver } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { carryOut } from '../../api/kit/carryOut.js';
import { carryOutRemoval } from '../../api/kit/carryOutRemoval.js';
import { payloadOf } from '../../api/kit/payloadOf.js';
import { RemovalInput } from '../../api/kit/removal.inputs.js';
import { changeLimit } from './changeLimit.js';
import { ChangeLimitInput, SetLimitInput } from './limit.inputs.js';
import { Limit } from './limit.type.js';
import { removeLimit } from './removeLimit.js';
import { setLimit } from './setLimit.js';

const asLimit = { field: 'limit', typeName: 'Limit' };
const SetLimitPayload = payloadOf('setLimit', 'limit', () => Limit, 'The new limit.');
const ChangeLimitPayload = payloadOf('changeLimit', 'limit', () => Limit, 'It as it is now.');
const RemoveLimitPayload = payloadOf('removeLimit', 'removedId', () => ID, 'What was taken away.');

@Resolver(() => Limit)
export class LimitResolver {
  @Mutation(() => SetLimitPayload, {
    description: 'Says what readings of a quantity are held against, for a part type or a model.',
  })
  setLimit(
    @Arg('input', () => SetLimitInput, { description: 'The limit.' }) input: SetLimitInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asLimit, (work) => setLimit(work, input));
  }

  @Mutation(() => ChangeLimitPayload, { description: 'Changes a limit.' })
  changeLimit(
    @Arg('input', () => ChangeLimitInput, { description: 'The change.' }) input: ChangeLimitInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asLimit, (work) => changeLimit(work, input));
  }

  @Mutation(() => RemoveLimitPayload, {
    description: 'Takes away a limit that was set by mistake; verdicts are computed without it.',
  })
  removeLimit(
    @Arg('input', () => RemovalInput, { description: 'Which.' }) input: RemovalInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOutRemoval(context, info, input.id, (work) => removeLimit(work, input));
  }
}
