import { GraphQLDateTimeISO } from 'graphql-scalars';
import { Field, Float, Int, ObjectType } from 'type-graphql';
import { Basis } from '../../api/kit/basis.type.js';
import { describedEnum } from '../../api/kit/describedEnum.js';
import { DecimalScalar } from '../../api/kit/scalars.js';
import { ReadingTier } from '../readings/readingTier.js';

export const TrendOutcome = describedEnum('TrendOutcome', 'What a series of readings says.', {
  TOO_FEW: 'Nothing yet: too few readings at different times for the method.',
  NONE: 'No more order than chance gives in one series of twenty.',
  RISING: 'It rises.',
  FALLING: 'It falls.',
});
export type TrendOutcome = keyof typeof TrendOutcome;

export const LimitEnd = describedEnum('LimitEnd', 'One of the two ends of a limit.', {
  LOWER: 'The least that a reading may be.',
  UPPER: 'The most that a reading may be.',
});
export type LimitEnd = keyof typeof LimitEnd;

@ObjectType({
  description: 'When a trend reaches the limit that it heads for, as an interval.',
  simpleResolvers: true,
})
export class LimitReached {
  @Field(() => LimitEnd, { description: 'Which end.' })
  end!: LimitEnd;

  @Field(() => DecimalScalar, { description: 'The limit, in the unit of the trend.' })
  limit!: string;

  @Field(() => GraphQLDateTimeISO, { description: 'By the Theil–Sen line; may be past.' })
  central!: string;

  @Field(() => GraphQLDateTimeISO, {
    nullable: true,
    description: 'The earlier end of the 95 % interval; null if the interval does not bound it.',
  })
  earliest!: string | null;

  @Field(() => GraphQLDateTimeISO, {
    nullable: true,
    description: 'The later end; null if the interval does not bound it within a hundred years.',
  })
  latest!: string | null;
}

@ObjectType({
  description:
    'One quantity of a component or an item over time, on one tier. Computed, never typed in.',
  simpleResolvers: true,
})
export class Trend {
  @Field(() => String, { description: 'The quantity, as the last reading names it.' })
  quantity!: string;

  @Field(() => ReadingTier, { description: 'Where the readings were taken.' })
  tier!: ReadingTier;

  @Field(() => String, { description: 'Unit of all figures here, UCUM.' })
  unit!: string;

  @Field(() => TrendOutcome, { description: 'The answer in a word.' })
  outcome!: TrendOutcome;

  @Field(() => Int, { description: 'Different times at which comparable readings were taken.' })
  instants!: number;

  @Field(() => Int, { description: 'How many more the method needs; 0 when it has enough.' })
  missingInstants!: number;

  @Field(() => Float, {
    nullable: true,
    description: 'Theil–Sen slope, `unit` a year; null with too few readings.',
  })
  slopePerYear!: number | null;

  @Field(() => Float, {
    nullable: true,
    description: "Lower end of Sen's 95 % interval of the slope; null where it has none.",
  })
  slopeLowPerYear!: number | null;

  @Field(() => Float, {
    nullable: true,
    description: "Upper end of Sen's 95 % interval of the slope; null where it has none.",
  })
  slopeHighPerYear!: number | null;

  @Field(() => Int, {
    nullable: true,
    description: 'S of the Mann–Kendall test: pairs that rise less pairs that fall.',
  })
  kendallS!: number | null;

  @Field(() => Float, {
    nullable: true,
    description: 'Two-sided probability, 0 to 1, of so much order by chance; null with too few.',
  })
  probability!: number | null;

  @Field(() => LimitReached, {
    nullable: true,
    description: 'When the limit is reached; null without a trend towards one.',
  })
  limitReached!: LimitReached | null;

  @Field(() => Boolean, {
    description: 'The limit is reached within a year of the last reading, which makes suspect.',
  })
  isLimitNear!: boolean;

  @Field(() => String, {
    nullable: true,
    description: 'Why earlier readings do not count; null when all do.',
  })
  whyEarlierLeftOut!: string | null;

  @Field(() => Basis, { description: 'How it came about.' })
  basis!: Basis;
}
