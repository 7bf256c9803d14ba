import { GraphQLDateTimeISO } from 'graphql-scalars';
import { Field, ObjectType } from 'type-graphql';
import { Basis } from '../../api/kit/basis.type.js';
import { describedEnum } from '../../api/kit/describedEnum.js';

export const ReadinessLevel = describedEnum(
  'ReadinessLevel',
  'How far a rig is from the air. The worst condition decides; the operator still does.',
  {
    DO_NOT_CONNECT:
      'A hazard is open or not cleared: do not connect it to mains, supply or antenna.',
    NOT_READY: 'Something else stands in the way.',
    CHECKS_DUE: 'All else is met, but a final check is missing or has lapsed.',
    ON_AIR_READY:
      'Nothing recorded stands in the way. Local codes and the licence held come first.',
  },
);
export type ReadinessLevel = keyof typeof ReadinessLevel;

@ObjectType({ description: 'One thing that stands in the way.', simpleResolvers: true })
export class Blocker {
  @Field(() => String, { description: 'A word for the sort of blocker that stays the same.' })
  code!: string;

  @Field(() => ReadinessLevel, { description: 'The best level that can be reached with it.' })
  level!: ReadinessLevel;

  @Field(() => String, { description: 'What it is, as a sentence.' })
  message!: string;

  @Field(() => String, { description: 'What would remove it.' })
  wouldBeMetBy!: string;
}

@ObjectType({
  description: 'Something to know that does not stand in the way.',
  simpleResolvers: true,
})
export class Caution {
  @Field(() => String, { description: 'A word for the sort of caution that stays the same.' })
  code!: string;

  @Field(() => String, { description: 'What it is, as a sentence.' })
  message!: string;
}

@ObjectType({
  description:
    'May it go on the air? For an accessory: may it serve? Derived from what is recorded, never typed in.',
  simpleResolvers: true,
})
export class Readiness {
  @Field(() => ReadinessLevel, { description: 'The answer.' })
  level!: ReadinessLevel;

  @Field(() => [Blocker], { description: 'Everything that stands in the way; empty if nothing.' })
  blockers!: Blocker[];

  @Field(() => [Caution], { description: 'What to know before using it.' })
  cautions!: Caution[];

  @Field(() => GraphQLDateTimeISO, {
    nullable: true,
    description: 'When the first final check lapses or lapsed; null when none will.',
  })
  checksValidUntil!: string | null;

  @Field(() => Basis, { description: 'What it rests on.' })
  basis!: Basis;
}
