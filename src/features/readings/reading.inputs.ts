import { GraphQLDateTimeISO } from 'graphql-scalars';
import { Field, ID, InputType, Int } from 'type-graphql';
import { DecimalScalar } from '../../api/kit/scalars.js';
import { ReadingTier } from './readingTier.js';

@InputType({ description: 'One reading, on a component or on an item: one of the two.' })
export class ReadingInput {
  @Field(() => ID, { nullable: true, description: 'The component that was measured.' })
  componentId?: string | null;

  @Field(() => ID, { nullable: true, description: 'The rig or accessory that was measured.' })
  itemId?: string | null;

  @Field(() => String, { description: 'What was measured, named as in the limits.' })
  quantity!: string;

  @Field(() => DecimalScalar, { description: 'What was read, in `unit`.' })
  value!: string;

  @Field(() => String, { description: 'Unit, UCUM: V, mA, uS, kOhm, W; 1 for a plain number.' })
  unit!: string;

  @Field(() => ReadingTier, { description: 'On a tester, or in circuit.' })
  tier!: ReadingTier;

  @Field(() => String, { nullable: true, description: 'The instrument.' })
  instrument?: string | null;

  @Field(() => String, { nullable: true, description: 'How it was done.' })
  method?: string | null;

  @Field(() => GraphQLDateTimeISO, { nullable: true, description: 'When; now if left out.' })
  takenAt?: Date | null;

  @Field(() => ID, { nullable: true, description: 'The party who took it.' })
  takenById?: string | null;

  @Field(() => String, { nullable: true, description: 'Remarks.' })
  note?: string | null;
}

@InputType({ description: 'Readings taken at one sitting: all are kept, or none.' })
export class RecordReadingsInput {
  @Field(() => [ReadingInput], { description: 'From 1 to 200 readings.' })
  readings!: ReadingInput[];
}

@InputType({ description: 'A correction of a reading; what is left out stays as it is.' })
export class ChangeReadingInput {
  @Field(() => ID, { description: 'The reading.' })
  id!: string;

  @Field(() => Int, { description: 'The version that you saw.' })
  version!: number;

  @Field(() => String, { nullable: true, description: 'What was measured.' })
  quantity?: string;

  @Field(() => DecimalScalar, { nullable: true, description: 'What was read.' })
  value?: string;

  @Field(() => String, { nullable: true, description: 'Unit, UCUM.' })
  unit?: string;

  @Field(() => ReadingTier, { nullable: true, description: 'On a tester, or in circuit.' })
  tier?: ReadingTier;

  @Field(() => String, { nullable: true, description: 'The instrument; null for none.' })
  instrument?: string | null;

  @Field(() => String, { nullable: true, description: 'How it was done; null for none.' })
  method?: string | null;

  @Field(() => GraphQLDateTimeISO, { nullable: true, description: 'When it was taken.' })
  takenAt?: Date;

  @Field(() => ID, { nullable: true, description: 'The party who took it; null for nobody.' })
  takenById?: string | null;

  @Field(() => String, { nullable: true, description: 'New remarks; null for none.' })
  note?: string | null;
}
