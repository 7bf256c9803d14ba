import { GraphQLLocalDate } from 'graphql-scalars';
import { Field, Float, Int, ObjectType } from 'type-graphql';
import { describedEnum } from '../../api/kit/describedEnum.js';
import { DecimalScalar } from '../../api/kit/scalars.js';
import { ReferenceSourceType } from './reference.type.js';

export const PreferredSeries = describedEnum(
  'PreferredSeries',
  'A series of preferred values of IEC 60063: so many values a decade.',
  {
    E3: '3 values a decade.',
    E6: '6 values, customary for parts of 20 %.',
    E12: '12 values, for 10 %.',
    E24: '24 values, for 5 %.',
    E48: '48 values, for 2 %.',
    E96: '96 values, for 1 %.',
    E192: '192 values, for 0.5 % and finer.',
  },
);
export type PreferredSeries = keyof typeof PreferredSeries;

@ObjectType('PreferredValue', {
  description: 'A value that is made, beside one that is wanted.',
  simpleResolvers: true,
})
export class PreferredValueType {
  @Field(() => DecimalScalar, { description: 'The value, in the unit of the one asked for.' })
  value!: string;

  @Field(() => Float, { description: 'Percent above (or below zero: under) the value wanted.' })
  differencePercent!: number;

  @Field(() => Float, {
    description:
      'The farthest that a part of the customary tolerance can lie from the value wanted, in percent.',
  })
  worstDeviationPercent!: number;
}

@ObjectType({
  description: 'What can be bought in place of a value.',
  simpleResolvers: true,
})
export class PreferredValues {
  @Field(() => PreferredValueType, { description: 'The nearest value of the series.' })
  nearest!: PreferredValueType;

  @Field(() => [PreferredValueType], {
    description: 'Every value of the series within the tolerance asked for, the nearest first.',
  })
  serving!: PreferredValueType[];

  @Field(() => DecimalScalar, { description: 'The customary tolerance of the series, in percent.' })
  tolerancePercent!: string;

  @Field(() => ReferenceSourceType, { description: 'Where the series is published.' })
  source!: ReferenceSourceType;
}

export const MarkedPart = describedEnum('MarkedPart', 'What a value code is printed on.', {
  RESISTOR: 'A resistor: values in ohms.',
  CAPACITOR: 'A capacitor: values in farads.',
});
export type MarkedPart = keyof typeof MarkedPart;

@ObjectType({ description: 'What a marking on a part says.', simpleResolvers: true })
export class DecodedValue {
  @Field(() => DecimalScalar, {
    nullable: true,
    description: 'The value in `unit`; null when the marking cannot be read: see `problem`.',
  })
  value!: string | null;

  @Field(() => String, { nullable: true, description: 'UCUM unit: Ohm or F; null if unread.' })
  unit!: string | null;

  @Field(() => DecimalScalar, {
    nullable: true,
    description: 'Tolerance in percent; null when the marking does not say.',
  })
  tolerancePercent!: string | null;

  @Field(() => Boolean, {
    description: 'False: published charts disagree about this tolerance; reject no part by it.',
  })
  isToleranceConfirmed!: boolean;

  @Field(() => Float, {
    nullable: true,
    description: 'Temperature coefficient in ppm/K; null when the marking does not say.',
  })
  ppmPerKelvin!: number | null;

  @Field(() => String, { nullable: true, description: 'Why it cannot be read; null if it can.' })
  problem!: string | null;

  @Field(() => ReferenceSourceType, { description: 'Where the code is published.' })
  source!: ReferenceSourceType;
}

@ObjectType('DateCodeReading', {
  description: 'One thing that a date code may mean.',
  simpleResolvers: true,
})
export class DateCodeReadingType {
  @Field(() => GraphQLLocalDate, { description: 'The earliest day that it can mean.' })
  earliest!: string;

  @Field(() => GraphQLLocalDate, { description: 'The latest day that it can mean.' })
  latest!: string;

  @Field(() => Int, { description: 'Year.' })
  year!: number;

  @Field(() => Int, { description: 'Week of the year as printed; how weeks count is not fixed.' })
  week!: number;

  @Field(() => String, { nullable: true, description: "Maker's number; null if left out." })
  maker!: string | null;

  @Field(() => String, { description: 'How the code is written when it is read so.' })
  meaning!: string;

  @Field(() => ReferenceSourceType, { description: 'Where this way of writing is described.' })
  source!: ReferenceSourceType;
}
