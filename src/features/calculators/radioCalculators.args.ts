import { ArgsType, Field, Float } from 'type-graphql';
import { GroundReflection } from './radio.type.js';

const theOhms = { defaultValue: 50, description: 'The load, in ohms.' };

@ArgsType()
export class PowerLevelArgs {
  @Field(() => Float, { nullable: true, description: 'Decibels above a milliwatt.' })
  dbm?: number | null;

  @Field(() => Float, { nullable: true, description: 'Watts.' })
  watts?: number | null;

  @Field(() => Float, { nullable: true, description: 'Volts, root mean square.' })
  voltsRms?: number | null;

  @Field(() => Float, theOhms)
  ohms!: number;
}

@ArgsType()
export class EnvelopePowerArgs {
  @Field(() => Float, { description: 'The greatest voltage from peak to peak.' })
  peakToPeakVolts!: number;

  @Field(() => Float, theOhms)
  ohms!: number;
}

@ArgsType()
export class MismatchArgs {
  @Field(() => Float, { nullable: true, description: 'Standing-wave ratio.' })
  swr?: number | null;

  @Field(() => Float, { nullable: true, description: 'Forward power in watts.' })
  forwardWatts?: number | null;

  @Field(() => Float, { nullable: true, description: 'Reflected power in watts.' })
  reflectedWatts?: number | null;

  @Field(() => Float, { nullable: true, description: 'Return loss in decibels.' })
  returnLossDecibels?: number | null;
}

@ArgsType()
export class ExposureDistanceArgs {
  @Field(() => Float, { description: 'Peak envelope power at the antenna, in watts.' })
  envelopeWatts!: number;

  @Field(() => Float, {
    defaultValue: 1,
    description: 'Mean over envelope power of the mode, above 0 to 1; 1 is the worst case.',
  })
  modeDuty!: number;

  @Field(() => Float, {
    defaultValue: 1,
    description: 'Share of the averaging time on the air, above 0 to 1.',
  })
  onShare!: number;

  @Field(() => Float, { defaultValue: 2.15, description: 'Gain over isotropic, in decibels.' })
  gainDbi!: number;

  @Field(() => Float, { description: 'Frequency in MHz, 0.3 to 100,000.' })
  megahertz!: number;

  @Field(() => GroundReflection, { defaultValue: 'PERFECT', description: 'What the ground adds.' })
  ground!: GroundReflection;

  @Field(() => Float, {
    nullable: true,
    description: 'Metres from the antenna at which the density is asked for.',
  })
  metres?: number | null;
}
