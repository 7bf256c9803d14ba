import { GraphQLDateTimeISO } from 'graphql-scalars';
import { Field, Float, ID, Int, ObjectType } from 'type-graphql';
import { Basis } from '../../api/kit/basis.type.js';
import { describedEnum } from '../../api/kit/describedEnum.js';
import { ReadinessLevel } from '../standing/readiness.type.js';

export const ConditionState = describedEnum('ConditionState', 'How a condition stands.', {
  MET: 'Something recorded says so.',
  NOT_MET: 'Something recorded stands against it.',
  NOT_KNOWN: 'Nothing recorded says so: a caution, which alone keeps no set off the air.',
});
export type ConditionState = keyof typeof ConditionState;

export const ConditionJoin = describedEnum('ConditionJoin', 'How a condition follows from parts.', {
  ALL: 'All its parts must hold; the worst decides.',
  ANY: 'One of its parts must hold.',
});
export type ConditionJoin = keyof typeof ConditionJoin;

export const HoursGround = describedEnum('HoursGround', 'What a rough figure of hours rests on.', {
  TASKS: 'The sum of what is expected to be left of the open tasks for it.',
  DEFAULT: 'No task is planned for it: our own usual figure, without a source.',
});
export type HoursGround = keyof typeof HoursGround;

@ObjectType({ description: 'A record that a condition rests on.', simpleResolvers: true })
export class ConditionEvidence {
  @Field(() => ID, { description: 'The record.' })
  recordId!: string;

  @Field(() => GraphQLDateTimeISO, {
    nullable: true,
    description: 'When it was seen, done or taken; null where the record has no date.',
  })
  at!: string | null;

  @Field(() => String, { description: 'What it says, as a sentence.' })
  words!: string;
}

@ObjectType({ description: 'Roughly how long something takes.', simpleResolvers: true })
export class RoughHours {
  @Field(() => Float, { description: 'Hours at the bench.' })
  hours!: number;

  @Field(() => HoursGround, { description: 'What the figure rests on.' })
  restsOn!: HoursGround;

  @Field(() => [ID], { description: 'The open tasks that were added up.' })
  taskIds!: string[];
}

@ObjectType({
  description:
    'One condition of a readiness answer: a leaf with its evidence, or a group of others.',
  simpleResolvers: true,
})
export class Condition {
  @Field(() => String, { description: 'Its place in the tree: 1, 1.2, 1.2.1.' })
  place!: string;

  @Field(() => String, { nullable: true, description: 'Place of the group; null for the root.' })
  partOf!: string | null;

  @Field(() => Int, { description: 'Steps from the root, which is 0.' })
  depth!: number;

  @Field(() => String, { description: 'A word for the sort of condition that stays the same.' })
  code!: string;

  @Field(() => String, { description: 'As it stands, in a sentence.' })
  statement!: string;

  @Field(() => ConditionState, { description: 'How it stands.' })
  state!: ConditionState;

  @Field(() => ReadinessLevel, { description: 'The best level that can be reached with it.' })
  level!: ReadinessLevel;

  @Field(() => ConditionJoin, { nullable: true, description: 'Null for a leaf.' })
  joins!: ConditionJoin | null;

  @Field(() => [ConditionEvidence], { description: 'What a leaf rests on; empty if nothing.' })
  evidence!: ConditionEvidence[];

  @Field(() => String, { nullable: true, description: 'What would satisfy it; null when met.' })
  wouldBeMetBy!: string | null;

  @Field(() => RoughHours, {
    nullable: true,
    description: 'Roughly how long that takes; null unless it is a leaf that is not met.',
  })
  roughly!: RoughHours | null;
}

@ObjectType({
  description: 'Readiness as a derivation: every condition that was judged and what it rests on.',
  simpleResolvers: true,
})
export class ReadinessDerivation {
  @Field(() => ReadinessLevel, { description: 'The answer.' })
  level!: ReadinessLevel;

  @Field(() => [Condition], { description: 'The tree: groups before their parts, the root first.' })
  conditions!: Condition[];

  @Field(() => [Condition], { description: 'The leaves that stand in the way.' })
  unmet!: Condition[];

  @Field(() => Basis, { description: 'What was judged, and as of when.' })
  basis!: Basis;
}
