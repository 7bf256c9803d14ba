import type { GraphQLResolveInfo } from 'graphql';
import { Arg, Args, Ctx, FieldResolver, Info, Mutation, Query, Resolver, Root } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { carryOut } from '../../api/kit/carryOut.js';
import { loadedField } from '../../api/kit/loadRelations.js';
import { PageArgs } from '../../api/kit/pageArgs.js';
import { payloadOf } from '../../api/kit/payloadOf.js';
import { FinalCheck } from '../readiness/finalCheck.type.js';
import { Item } from '../items/item.type.js';
import { Party } from '../parties/party.type.js';
import { abandonBringUp } from './abandonBringUp.js';
import {
  AbandonBringUpInput,
  CorrectBringUpStepInput,
  RecordBringUpStepInput,
  ResumeBringUpInput,
  StartBringUpInput,
} from './bringUp.inputs.js';
import { BringUp, BringUpConnection, BringUpStep, PowerStanding } from './bringUp.type.js';
import { correctBringUpStep } from './correctBringUpStep.js';
import { BringUpProcedure } from './procedure.type.js';
import { procedures } from './procedures.js';
import { recordBringUpStep } from './recordBringUpStep.js';
import { resumeBringUp } from './resumeBringUp.js';
import { startBringUp } from './startBringUp.js';

const asBringUp = { field: 'bringUp', typeName: 'BringUp' };
const payload = (mutation: string) =>
  payloadOf(mutation, 'bringUp', () => BringUp, 'The bring-up as it is now.');
const StartBringUpPayload = payload('startBringUp');
const RecordBringUpStepPayload = payload('recordBringUpStep');
const CorrectBringUpStepPayload = payload('correctBringUpStep');
const AbandonBringUpPayload = payload('abandonBringUp');
const ResumeBringUpPayload = payload('resumeBringUp');

@Resolver(() => BringUp)
export class BringUpResolver {
  @Query(() => [BringUpProcedure], { description: 'The bring-up procedures that there are.' })
  bringUpProcedures() {
    return [...procedures.values()];
  }

  @FieldResolver(() => Item, { description: 'The rig or accessory.' })
  item(@Root() run: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(run, info);
  }

  @FieldResolver(() => Party, { nullable: true, description: 'Who began it; null if unrecorded.' })
  startedBy(@Root() run: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(run, info);
  }

  @FieldResolver(() => FinalCheck, {
    nullable: true,
    description: 'The final check that it recorded; null unless it is passed.',
  })
  finalCheck(@Root() run: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(run, info);
  }

  @FieldResolver(() => [BringUpStep], { description: 'Its steps, in order.' })
  steps(@Root() run: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(run, info);
  }

  @FieldResolver(() => PowerStanding, {
    description: 'Whether something recorded stands against applying power, and why.',
  })
  power(@Root() run: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(run, info);
  }

  @Mutation(() => StartBringUpPayload, {
    description: 'Begins a bring-up. Sent again under its key, it changes nothing.',
  })
  startBringUp(
    @Arg('input', () => StartBringUpInput, { description: 'What and how.' })
    input: StartBringUpInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asBringUp, (work) => startBringUp(work, input));
  }

  @Mutation(() => RecordBringUpStepPayload, {
    description:
      'Records a step with its readings. A failed gate stops the bring-up and opens a finding; a step with power is refused while a hazard is not cleared.',
  })
  recordBringUpStep(
    @Arg('input', () => RecordBringUpStepInput, { description: 'The step.' })
    input: RecordBringUpStepInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asBringUp, (work) => recordBringUpStep(work, input));
  }

  @Mutation(() => CorrectBringUpStepPayload, {
    description:
      'Puts right a step that was written down by mistake; what it said is kept. How it came out is computed anew. A finding that a gate opened stays until somebody settles it.',
  })
  correctBringUpStep(
    @Arg('input', () => CorrectBringUpStepInput, { description: 'As it really was.' })
    input: CorrectBringUpStepInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asBringUp, (work) => correctBringUpStep(work, input));
  }

  @Mutation(() => AbandonBringUpPayload, { description: 'Gives a bring-up up for now.' })
  abandonBringUp(
    @Arg('input', () => AbandonBringUpInput, { description: 'Which, and why.' })
    input: AbandonBringUpInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asBringUp, (work) => abandonBringUp(work, input));
  }

  @Mutation(() => ResumeBringUpPayload, {
    description: 'Goes on with a bring-up that stopped or was given up.',
  })
  resumeBringUp(
    @Arg('input', () => ResumeBringUpInput, { description: 'Which.' }) input: ResumeBringUpInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asBringUp, (work) => resumeBringUp(work, input));
  }
}

@Resolver(() => Item)
export class BringUpsOfItemResolver {
  @FieldResolver(() => BringUpConnection, { description: 'Bring-ups of it, the latest first.' })
  bringUps(@Root() item: object, @Args() _args: PageArgs, @Info() info: GraphQLResolveInfo) {
    return loadedField(item, info);
  }
}
