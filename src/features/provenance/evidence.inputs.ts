import { Field, ID, InputType, Int } from 'type-graphql';
import { EvidenceBearing, EvidenceKind, EvidenceStrength } from './evidence.words.js';

@InputType({
  description: 'A piece of evidence on an event or on a claim: `eventId` or `claimId`.',
})
export class RecordEvidenceInput {
  @Field(() => ID, { nullable: true, description: 'The event that it bears on.' })
  eventId?: string | null;

  @Field(() => ID, { nullable: true, description: 'The claim that it bears on.' })
  claimId?: string | null;

  @Field(() => EvidenceBearing, {
    defaultValue: EvidenceBearing.SUPPORTS,
    description: 'Whether it supports or contradicts.',
  })
  bearing!: EvidenceBearing;

  @Field(() => EvidenceKind, { description: 'What sort of thing it is.' })
  kind!: EvidenceKind;

  @Field(() => EvidenceStrength, { description: 'How much it weighs.' })
  strength!: EvidenceStrength;

  @Field(() => String, { description: 'What it is, and what it says.' })
  description!: string;

  @Field(() => String, { nullable: true, description: 'Where it is kept.' })
  keptAt?: string | null;
}

@InputType({ description: 'A change of a piece of evidence; what is left out stays as it is.' })
export class ChangeEvidenceInput {
  @Field(() => ID, { description: 'The evidence.' })
  id!: string;

  @Field(() => Int, { description: 'The version that you saw.' })
  version!: number;

  @Field(() => EvidenceBearing, { nullable: true, description: 'Supports or contradicts.' })
  bearing?: EvidenceBearing;

  @Field(() => EvidenceKind, { nullable: true, description: 'What sort of thing it is.' })
  kind?: EvidenceKind;

  @Field(() => EvidenceStrength, { nullable: true, description: 'How much it weighs.' })
  strength?: EvidenceStrength;

  @Field(() => String, { nullable: true, description: 'What it is, and what it says.' })
  description?: string;

  @Field(() => String, { nullable: true, description: 'Where it is kept; null for unknown.' })
  keptAt?: string | null;

  @Field(() => String, {
    nullable: true,
    description: 'Why it counts no more: it stays on record; null: it counts again.',
  })
  withdrawnReason?: string | null;
}
