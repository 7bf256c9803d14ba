import { Field, Float, ObjectType } from 'type-graphql';
import { describedEnum } from '../../api/kit/describedEnum.js';
import { CalculationWorking } from './working.type.js';

@ObjectType({ description: 'One power, said in three ways.', simpleResolvers: true })
export class PowerLevel {
  @Field(() => Float, { description: 'Decibels above a milliwatt.' })
  dbm!: number;

  @Field(() => Float, { description: 'Watts.' })
  watts!: number;

  @Field(() => Float, { description: 'Volts across the load, root mean square.' })
  voltsRms!: number;

  @Field(() => Float, { description: 'Volts from peak to peak.' })
  voltsPeakToPeak!: number;

  @Field(() => CalculationWorking, { description: 'How it came about.' })
  working!: CalculationWorking;
}

@ObjectType({ description: 'Peak envelope power from a scope reading.', simpleResolvers: true })
export class EnvelopePower {
  @Field(() => Float, { description: 'Watts at the crest of the envelope.' })
  watts!: number;

  @Field(() => Float, { description: 'Half the reading, in volts.' })
  peakVolts!: number;

  @Field(() => CalculationWorking, { description: 'How it came about.' })
  working!: CalculationWorking;
}

@ObjectType({ description: 'How a load matches its line.', simpleResolvers: true })
export class LineMismatch {
  @Field(() => Float, { description: 'Standing-wave ratio, 1 and up.' })
  swr!: number;

  @Field(() => Float, { description: 'Share of the voltage that comes back, 0 to 1.' })
  reflection!: number;

  @Field(() => Float, {
    nullable: true,
    description: 'Return loss in decibels; null when nothing comes back.',
  })
  returnLossDecibels!: number | null;

  @Field(() => Float, { description: 'Percent of the power that comes back.' })
  reflectedPercent!: number;

  @Field(() => Float, { description: 'Power that does not reach the load, in decibels.' })
  mismatchLossDecibels!: number;

  @Field(() => CalculationWorking, { description: 'How it came about.' })
  working!: CalculationWorking;
}

export const GroundReflection = describedEnum(
  'GroundReflection',
  'How much the ground adds to the power density in front of an antenna.',
  {
    NONE: 'Free space: nothing.',
    EPA: 'The factor of 1.6 in field strength, 2.56 in density: usual in the public bulletin.',
    PERFECT: 'A perfect mirror: twice the field, four times the density; the worst case.',
  },
);
export type GroundReflection = keyof typeof GroundReflection;

export const ExposureSituation = describedEnum('ExposureSituation', 'Who is exposed.', {
  CONTROLLED: 'Those who know of it and can leave: the operator.',
  UNCONTROLLED: 'Everybody else: family, visitors, neighbours.',
});
export type ExposureSituation = keyof typeof ExposureSituation;

@ObjectType({ description: 'A limit of exposure and its distance.', simpleResolvers: true })
export class ExposureAt {
  @Field(() => ExposureSituation, { description: 'Who is exposed.' })
  situation!: ExposureSituation;

  @Field(() => Float, { description: 'The limit in mW/cm².' })
  limitMilliwattsPerSquareCentimetre!: number;

  @Field(() => Float, { description: 'Metres from the antenna at which the sum meets it.' })
  metres!: number;

  @Field(() => Float, { description: 'Minutes over which the power is averaged.' })
  averagingMinutes!: number;
}

@ObjectType({
  description: 'From which distance on the far field of an antenna keeps the limits of exposure.',
  simpleResolvers: true,
})
export class ExposureDistance {
  @Field(() => Float, { description: 'Mean power at the antenna, in watts.' })
  averageWatts!: number;

  @Field(() => Float, { description: 'Mean power times gain over isotropic, in watts.' })
  radiatedWatts!: number;

  @Field(() => [ExposureAt], { description: 'Controlled, then uncontrolled.' })
  distances!: ExposureAt[];

  @Field(() => Float, {
    nullable: true,
    description: 'Power density at `metres`, in mW/cm²; null if none were given.',
  })
  density!: number | null;

  @Field(() => Float, { description: 'Nearer than this, in metres, the formula does not hold.' })
  nearFieldMetres!: number;

  @Field(() => CalculationWorking, { description: 'How it came about.' })
  working!: CalculationWorking;
}
