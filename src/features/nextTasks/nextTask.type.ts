import { Field, Float, Int, ObjectType } from 'type-graphql';
import { Basis } from '../../api/kit/basis.type.js';
import { describedEnum } from '../../api/kit/describedEnum.js';

export const NextTaskReasonCode = describedEnum(
  'NextTaskReasonCode',
  'What doing a task now is good for.',
  {
    BRINGS_ITEM_NEARER: 'The set is not ready, and this is part of what is left on it.',
    LACKS_ONLY_CHECKS: 'The set lacks nothing but final checks, and this is testing.',
    FREES_PROJECT: 'Nothing else of its project can be done until it is.',
    OPENS_TASKS: 'Other tasks wait for it.',
    EARNS_COMPLETION: 'It earns hours of its project.',
    IS_BEGUN: 'It is begun already.',
  },
);

@ObjectType({ description: 'Why a task is worth doing now.', simpleResolvers: true })
export class NextTaskReason {
  @Field(() => NextTaskReasonCode, { description: 'The reason in a word.' })
  code!: keyof typeof NextTaskReasonCode;

  @Field(() => String, { description: 'The reason in a sentence.' })
  message!: string;

  @Field(() => Float, { description: 'Its share in the ranking, of our own choice.' })
  points!: number;
}

@ObjectType({ description: 'A task that can be done now.', simpleResolvers: true })
export class NextTask {
  @Field(() => Int, {
    description:
      'Minutes that are expected to be left on it, by what finished tasks of its kind say of the estimates.',
  })
  leftMinutes!: number;

  @Field(() => Boolean, { description: 'Expected to be finished in the time that is free.' })
  fits!: boolean;

  @Field(() => [String], {
    description:
      'Hazards of the set that are not cleared or belong to its design, with their cautions: read them first. Local codes and qualified practice come first.',
  })
  hazards!: string[];

  @Field(() => Float, { description: 'Sum of the points; only their order means something.' })
  points!: number;

  @Field(() => [NextTaskReason], { description: 'Why: what it unlocks.' })
  reasons!: NextTaskReason[];
}

@ObjectType({
  description: 'A task whose turn it is, and which what is at hand does not allow.',
  simpleResolvers: true,
})
export class HeldBackTask {
  @Field(() => [String], {
    description:
      'What holds it back, as sentences. Cautions of hazards: local codes and qualified practice come first.',
  })
  reasons!: string[];
}

@ObjectType({
  description: 'What to do with the time that is free now.',
  simpleResolvers: true,
})
export class NextTasks {
  @Field(() => [NextTask], {
    description: 'Tasks that can be done now: those that fit the time first, then by points.',
  })
  suggestions!: NextTask[];

  @Field(() => [HeldBackTask], {
    description: 'Tasks whose turn it is, held back by a part or a hazard.',
  })
  heldBack!: HeldBackTask[];

  @Field(() => Basis, { description: 'What was looked at, and how it is ranked.' })
  basis!: Basis;
}
