import type { GraphQLResolveInfo } from 'graphql';
import { Arg, Ctx, FieldResolver, Info, Mutation, Resolver, Root } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { carryOut } from '../../api/kit/carryOut.js';
import { loadedField } from '../../api/kit/loadRelations.js';
import { payloadOf } from '../../api/kit/payloadOf.js';
import { PartType } from '../parts/partType.type.js';
import { SetPartsNeededInput } from './partsNeeded.inputs.js';
import { PartNeeded } from './partsNeeded.type.js';
import { setPartsNeeded } from './setPartsNeeded.js';
import { Task } from './task.type.js';

const SetPartsNeededPayload = payloadOf(
  'setPartsNeeded',
  'task',
  () => Task,
  'The task as it is now.',
);

@Resolver(() => Task)
export class PartsOfTaskResolver {
  @FieldResolver(() => [PartNeeded], {
    description:
      'Parts that it cannot be done without, whether there are any or not. What is put aside for it from the shelf: `reservations`.',
  })
  partsNeeded(@Root() task: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(task, info);
  }

  @Mutation(() => SetPartsNeededPayload, { description: 'Says which parts a task needs.' })
  setPartsNeeded(
    @Arg('input', () => SetPartsNeededInput, { description: 'The task and its parts.' })
    input: SetPartsNeededInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    const asTask = { field: 'task', typeName: 'Task' };
    return carryOut(context, info, asTask, (work) => setPartsNeeded(work, input));
  }
}

@Resolver(() => PartNeeded)
export class PartNeededResolver {
  @FieldResolver(() => PartType, { description: 'The part type.' })
  partType(@Root() part: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(part, info);
  }
}
