import { GraphQLDateTimeISO } from 'graphql-scalars';
import { Field, ID, InputType } from 'type-graphql';
import { DecimalScalar } from '../../api/kit/scalars.js';
import { ReadingTier } from '../readings/readingTier.js';

@InputType({ description: 'One column of a sweep: what is read in every position.' })
export class SweepQuantityInput {
  @Field(() => String, { description: 'What is measured, named as in the limits.' })
  quantity!: string;

  @Field(() => String, { description: 'Unit, UCUM: mS, uA, 1.' })
  unit!: string;
}

@InputType({ description: 'One row of a sweep: what was read in one position.' })
export class SweepRowInput {
  @Field(() => String, { description: 'The position: V3.' })
  designator!: string;

  @Field(() => [DecimalScalar], {
    nullable: 'items',
    description: 'One value a quantity, in their order; null where nothing was read.',
  })
  values!: (string | null)[];

  @Field(() => String, { nullable: true, description: 'Remarks, kept with each of its readings.' })
  note?: string | null;
}

@InputType({
  description:
    'Readings of many positions taken in one go. Rows stand or fall one by one; the same sweep sent again changes nothing.',
})
export class RecordSweepInput {
  @Field(() => String, {
    description:
      'Your own name for this sweep, up to 100 characters, unique. The same key with the same content gives the same answer; with other content it is refused.',
  })
  key!: string;

  @Field(() => ID, { description: 'The rig or accessory.' })
  itemId!: string;

  @Field(() => ID, {
    nullable: true,
    description:
      'A sweep template of its model: what is left out below is taken from it, and its positions that no row reads are named in the answer.',
  })
  templateId?: string | null;

  @Field(() => [SweepQuantityInput], {
    nullable: true,
    description: 'The columns, from 1 to 20. May be left out with a template.',
  })
  quantities?: SweepQuantityInput[] | null;

  @Field(() => [SweepRowInput], { description: 'The rows, from 1 to 200.' })
  rows!: SweepRowInput[];

  @Field(() => ReadingTier, {
    nullable: true,
    description: 'On a tester, or in circuit. May be left out with a template.',
  })
  tier?: ReadingTier | null;

  @Field(() => String, { nullable: true, description: 'The instrument.' })
  instrument?: string | null;

  @Field(() => String, { nullable: true, description: 'How it was done.' })
  method?: string | null;

  @Field(() => GraphQLDateTimeISO, { nullable: true, description: 'When; now if left out.' })
  takenAt?: Date | null;

  @Field(() => ID, { nullable: true, description: 'The party who took them.' })
  takenById?: string | null;

  @Field(() => Boolean, {
    defaultValue: false,
    description:
      'True: where nothing is recorded in a position, a component of the part type that the model has there is taken to sit there, of unknown origin.',
  })
  fitsExpected!: boolean;
}
