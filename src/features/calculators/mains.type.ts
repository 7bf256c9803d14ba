import { Field, Float, ObjectType } from 'type-graphql';
import { describedEnum } from '../../api/kit/describedEnum.js';
import { CalculationWorking } from './working.type.js';

export const FilamentKind = describedEnum('FilamentKind', 'What a heater or filament is.', {
  RECEIVING: 'Oxide-coated cathode of a receiving tube: 10 percent either way.',
  THORIATED: 'Thoriated tungsten of a transmitting tube: 5 percent either way.',
});
export type FilamentKind = keyof typeof FilamentKind;

@ObjectType({ description: "A heater on today's mains.", simpleResolvers: true })
export class HeaterVoltage {
  @Field(() => Float, { description: 'What it gets, in volts.' })
  volts!: number;

  @Field(() => Float, { description: 'Percent above its nominal voltage; below zero: under it.' })
  deviationPercent!: number;

  @Field(() => Float, { description: 'Lower end of its tolerance, in volts.' })
  lowestVolts!: number;

  @Field(() => Float, { description: 'Upper end of its tolerance, in volts.' })
  highestVolts!: number;

  @Field(() => Boolean, { description: 'Between the two, ends included.' })
  isWithinTolerance!: boolean;

  @Field(() => Float, { description: 'The least mains voltage that keeps it within.' })
  lowestMainsVolts!: number;

  @Field(() => Float, { description: 'The most mains voltage that keeps it within.' })
  highestMainsVolts!: number;

  @Field(() => CalculationWorking, { description: 'How it came about.' })
  working!: CalculationWorking;
}

@ObjectType({
  description: 'A resistor in series with a set, to lower the mains.',
  simpleResolvers: true,
})
export class SeriesDropper {
  @Field(() => Float, { description: 'Its resistance, in ohms.' })
  ohms!: number;

  @Field(() => Float, { description: 'Its heat, in watts.' })
  watts!: number;

  @Field(() => Float, { description: 'The rating to buy, in watts: twice the heat.' })
  ratedWatts!: number;

  @Field(() => CalculationWorking, { description: 'How it came about.' })
  working!: CalculationWorking;
}

@ObjectType({
  description: 'A small transformer whose secondary opposes the mains.',
  simpleResolvers: true,
})
export class BuckingTransformer {
  @Field(() => Float, { description: 'What the set gets, in volts.' })
  volts!: number;

  @Field(() => Float, { description: 'What is taken off, in volts.' })
  buckedVolts!: number;

  @Field(() => Float, { description: 'The least current rating of the secondary, in amperes.' })
  leastWindingAmperes!: number;

  @Field(() => Float, { description: 'The least rating of the transformer, in volt-amperes.' })
  leastVoltAmperes!: number;

  @Field(() => CalculationWorking, { description: 'How it came about.' })
  working!: CalculationWorking;
}

@ObjectType({ description: 'A line fuse for a set.', simpleResolvers: true })
export class FuseRating {
  @Field(() => Float, { description: 'Running current times the factor, in amperes.' })
  wantedAmperes!: number;

  @Field(() => Float, {
    nullable: true,
    description: 'The next step of IEC 60127, in amperes; null above the largest.',
  })
  iecAmperes!: number | null;

  @Field(() => Float, {
    nullable: true,
    description: 'The next size customary in the US, in amperes; null above the largest.',
  })
  usAmperes!: number | null;

  @Field(() => Boolean, {
    description: "The maker's fuse is smaller than this sum: the maker's counts.",
  })
  isMakersLower!: boolean;

  @Field(() => CalculationWorking, { description: 'How it came about.' })
  working!: CalculationWorking;
}
