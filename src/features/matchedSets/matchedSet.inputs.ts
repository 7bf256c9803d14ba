import { Field, ID, InputType, Int } from 'type-graphql';
import { DecimalScalar } from '../../api/kit/scalars.js';
import { ReadingTier } from '../readings/readingTier.js';

@InputType({ description: 'Components that are to read alike.' })
export class CreateMatchedSetInput {
  @Field(() => String, { description: 'What it is: finals of the station transmitter.' })
  name!: string;

  @Field(() => String, { description: 'The quantity in which they are to match.' })
  quantity!: string;

  @Field(() => ReadingTier, { description: 'Where the readings are taken that are compared.' })
  tier!: ReadingTier;

  @Field(() => DecimalScalar, {
    description: 'The spread that still counts as matched, per cent of the mean, up to 100.',
  })
  largestMismatchPercent!: string;

  @Field(() => String, {
    nullable: true,
    description: 'Where that limit comes from: a handbook, or "common practice, no source".',
  })
  source?: string | null;

  @Field(() => [ID], { description: 'The components, from 2 to 50.' })
  componentIds!: string[];

  @Field(() => String, { nullable: true, description: 'Remarks.' })
  note?: string | null;
}

@InputType({ description: 'A change of a matched set; what is left out stays as it is.' })
export class ChangeMatchedSetInput {
  @Field(() => ID, { description: 'The set.' })
  id!: string;

  @Field(() => Int, { description: 'The version that you saw.' })
  version!: number;

  @Field(() => String, { nullable: true, description: 'What it is.' })
  name?: string;

  @Field(() => DecimalScalar, { nullable: true, description: 'The spread that still matches, %.' })
  largestMismatchPercent?: string;

  @Field(() => String, { nullable: true, description: 'Where the limit comes from; or null.' })
  source?: string | null;

  @Field(() => [ID], { nullable: true, description: 'All its components, anew.' })
  componentIds?: string[];

  @Field(() => String, { nullable: true, description: 'New remarks; null for none.' })
  note?: string | null;
}
