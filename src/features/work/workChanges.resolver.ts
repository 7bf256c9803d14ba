import type { GraphQLResolveInfo } from 'graphql';
import { Arg, Ctx, Info, Mutation, Resolver } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { requestedNames } from '../../api/kit/requestedNames.js';
import { correctSession } from './correctSession.js';
import { endBreak } from './endBreak.js';
import { recordSession } from './recordSession.js';
import { carryOutSession, sessionPayloadOf } from './sessionPayload.js';
import { startTimer } from './startTimer.js';
import { stopTimer } from './stopTimer.js';
import { takeBreak } from './takeBreak.js';
import { StartTimerInput, StopTimerInput, TimerInput } from './timer.inputs.js';
import { CorrectSessionInput, RecordSessionInput } from './workSession.inputs.js';
import { WorkSession } from './workSession.type.js';

const RecordSessionPayload = sessionPayloadOf('recordSession');
const CorrectSessionPayload = sessionPayloadOf('correctSession');
const StartTimerPayload = sessionPayloadOf('startTimer');
const TakeBreakPayload = sessionPayloadOf('takeBreak');
const EndBreakPayload = sessionPayloadOf('endBreak');
const StopTimerPayload = sessionPayloadOf('stopTimer');
const theTimer = { description: 'Whose timer.' };

@Resolver(() => WorkSession)
export class WorkChangesResolver {
  @Mutation(() => RecordSessionPayload, { description: 'Writes down a session that is over.' })
  recordSession(
    @Arg('input', () => RecordSessionInput, { description: 'The session.' })
    input: RecordSessionInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOutSession(context, info, (work) => recordSession(work, input));
  }

  @Mutation(() => CorrectSessionPayload, {
    description: 'Corrects a session; the history keeps what it was.',
  })
  correctSession(
    @Arg('input', () => CorrectSessionInput, { description: 'The correction.' })
    input: CorrectSessionInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOutSession(context, info, (work) => correctSession(work, input));
  }

  @Mutation(() => StartTimerPayload, {
    description: 'Starts a timer; refused while another of the same person runs.',
  })
  startTimer(
    @Arg('input', () => StartTimerInput, { description: 'Who works, and on what.' })
    input: StartTimerInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    const showsHazards = requestedNames(info).has('hazards');
    return carryOutSession(context, info, (work) => startTimer(work, input, showsHazards));
  }

  @Mutation(() => TakeBreakPayload, { description: 'A break begins; the timer goes on.' })
  takeBreak(
    @Arg('input', () => TimerInput, theTimer) input: TimerInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOutSession(context, info, (work) => takeBreak(work, input));
  }

  @Mutation(() => EndBreakPayload, { description: 'The break is over; work goes on.' })
  endBreak(
    @Arg('input', () => TimerInput, theTimer) input: TimerInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOutSession(context, info, (work) => endBreak(work, input));
  }

  @Mutation(() => StopTimerPayload, {
    description:
      'Ends the session, and a break that still lasts with it. After 16 hours it asks when the work ended.',
  })
  stopTimer(
    @Arg('input', () => StopTimerInput, { description: 'Whose timer, and when the work ended.' })
    input: StopTimerInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOutSession(context, info, (work) => stopTimer(work, input));
  }
}
