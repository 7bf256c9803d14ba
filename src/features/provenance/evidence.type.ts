import { GraphQLDateTimeISO } from 'graphql-scalars';
import { Field, Int, ObjectType } from 'type-graphql';
import { describedEnum } from '../../api/kit/describedEnum.js';
import { Node } from '../../api/kit/node.type.js';
import { EvidenceBearing, EvidenceKind, EvidenceStrength } from './evidence.words.js';

@ObjectType({
  implements: Node,
  description: 'Something that supports or contradicts what is said to have happened.',
  simpleResolvers: true,
})
export class Evidence extends Node {
  @Field(() => Int, { description: 'Counts changes; send it back with your change.' })
  version!: number;

  @Field(() => EvidenceBearing, { description: 'Whether it supports or contradicts.' })
  bearing!: EvidenceBearing;

  @Field(() => EvidenceKind, { description: 'What sort of thing it is.' })
  kind!: EvidenceKind;

  @Field(() => EvidenceStrength, { description: 'How much it weighs.' })
  strength!: EvidenceStrength;

  @Field(() => String, { description: 'What it is, and what it says.' })
  description!: string;

  @Field(() => String, { nullable: true, description: 'Where it is kept; null if not recorded.' })
  keptAt!: string | null;

  @Field(() => GraphQLDateTimeISO, {
    nullable: true,
    description: 'Since when it counts no more; null while it does.',
  })
  withdrawnAt!: string | null;

  @Field(() => String, { nullable: true, description: 'Why it counts no more; null if it does.' })
  withdrawnReason!: string | null;
}

export const ConfidenceLevel = describedEnum(
  'ConfidenceLevel',
  'How far what is said of the past can be relied on.',
  {
    CLAIMED: 'Nothing but people’s word.',
    WEAKLY_SUPPORTED: 'Only weak evidence supports it.',
    SUPPORTED: 'One sort of evidence of moderate strength supports it.',
    WELL_SUPPORTED: 'Strong evidence, or moderate evidence of two sorts, supports it.',
    DISPUTED: 'Evidence speaks against it, and none stronger than what supports it.',
    CONTRADICTED: 'The strongest evidence speaks against it.',
  },
);
export type ConfidenceLevel = keyof typeof ConfidenceLevel;

@ObjectType({
  description: 'How far a statement can be relied on, with the rule that says so.',
  simpleResolvers: true,
})
export class Confidence {
  @Field(() => ConfidenceLevel, { description: 'The level.' })
  level!: ConfidenceLevel;

  @Field(() => String, { description: 'The rule that gave it, in a sentence.' })
  rule!: string;

  @Field(() => Int, { description: 'How many pieces of evidence count.' })
  evidenceCount!: number;
}
