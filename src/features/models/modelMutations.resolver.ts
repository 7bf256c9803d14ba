import type { GraphQLResolveInfo } from 'graphql';
import { Arg, Ctx, ID, Info, Mutation, Resolver } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { carryOut } from '../../api/kit/carryOut.js';
import { carryOutRemoval } from '../../api/kit/carryOutRemoval.js';
import { payloadOf } from '../../api/kit/payloadOf.js';
import { RemovalInput } from '../../api/kit/removal.inputs.js';
import { addFitOutPositions } from './addFitOutPositions.js';
import { changeFitOutPosition } from './changeFitOutPosition.js';
import { changeModel } from './changeModel.js';
import { createModel } from './createModel.js';
import { AddFitOutPositionsInput, ChangeFitOutPositionInput } from './fitOutPosition.inputs.js';
import { FitOutPosition } from './fitOutPosition.type.js';
import { ChangeModelInput, CreateModelInput } from './model.inputs.js';
import { Model } from './model.type.js';
import { removeFitOutPosition } from './removeFitOutPosition.js';

const asModel = { field: 'model', typeName: 'Model' };
const asPosition = { field: 'position', typeName: 'FitOutPosition' };
const asItIsNow = 'It as it is now.';
const CreateModelPayload = payloadOf('createModel', 'model', () => Model, 'The new model.');
const ChangeModelPayload = payloadOf('changeModel', 'model', () => Model, asItIsNow);
const AddFitOutPositionsPayload = payloadOf('addFitOutPositions', 'model', () => Model, asItIsNow);
const ChangeFitOutPositionPayload = payloadOf(
  'changeFitOutPosition',
  'position',
  () => FitOutPosition,
  asItIsNow,
);
const RemoveFitOutPositionPayload = payloadOf(
  'removeFitOutPosition',
  'removedId',
  () => ID,
  'What was taken away.',
);

@Resolver()
export class ModelMutationsResolver {
  @Mutation(() => CreateModelPayload, {
    description: 'Writes down a new model with its bands, roles and fit-out.',
  })
  createModel(
    @Arg('input', () => CreateModelInput, { description: 'The new model.' })
    input: CreateModelInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asModel, (work) => createModel(work, input));
  }

  @Mutation(() => ChangeModelPayload, {
    description: 'Changes a model, takes it out of lists or brings it back.',
  })
  changeModel(
    @Arg('input', () => ChangeModelInput, { description: 'The change.' }) input: ChangeModelInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asModel, (work) => changeModel(work, input));
  }

  @Mutation(() => AddFitOutPositionsPayload, { description: "Adds to a model's fit-out." })
  addFitOutPositions(
    @Arg('input', () => AddFitOutPositionsInput, { description: 'The positions.' })
    input: AddFitOutPositionsInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asModel, (work) => addFitOutPositions(work, input));
  }

  @Mutation(() => ChangeFitOutPositionPayload, { description: 'Changes a position of a fit-out.' })
  changeFitOutPosition(
    @Arg('input', () => ChangeFitOutPositionInput, { description: 'The change.' })
    input: ChangeFitOutPositionInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asPosition, (work) => changeFitOutPosition(work, input));
  }

  @Mutation(() => RemoveFitOutPositionPayload, {
    description:
      'Takes a position written by mistake out of a fit-out. Refused when it was checked off on some set.',
  })
  removeFitOutPosition(
    @Arg('input', () => RemovalInput, { description: 'Which.' }) input: RemovalInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOutRemoval(context, info, input.id, (work) => removeFitOutPosition(work, input));
  }
}
