import { ArgsType, Field, Float } from 'type-graphql';
import { ReformingRuleName } from './reforming.type.js';

@ArgsType()
export class DischargeTimeArgs {
  @Field(() => Float, { description: 'All capacitors in parallel, in µF.' })
  microfarads!: number;

  @Field(() => Float, { description: 'Volts when it is switched off.' })
  startVolts!: number;

  @Field(() => Float, { defaultValue: 50, description: 'Volts to come down to.' })
  targetVolts!: number;

  @Field(() => Float, { description: 'The bleeder, in ohms.' })
  bleederOhms!: number;
}

@ArgsType()
export class BleederResistorArgs {
  @Field(() => Float, { description: 'All capacitors in parallel, in µF.' })
  microfarads!: number;

  @Field(() => Float, { description: 'Volts while the set is on.' })
  workingVolts!: number;

  @Field(() => Float, { defaultValue: 50, description: 'Volts to come down to.' })
  targetVolts!: number;

  @Field(() => Float, { defaultValue: 60, description: 'In how many seconds.' })
  withinSeconds!: number;
}

@ArgsType()
export class ReformingArgs {
  @Field(() => Float, { description: 'Rated voltage of the capacitor, 3 to 1000 V.' })
  ratedVolts!: number;

  @Field(() => Float, {
    nullable: true,
    description: 'What the supply gives, in volts; the rated voltage if left out, never more.',
  })
  supplyVolts?: number | null;

  @Field(() => Float, {
    nullable: true,
    description: 'Months that it lay idle; 40 years if left out.',
  })
  monthsStored?: number | null;

  @Field(() => ReformingRuleName, {
    nullable: true,
    description: 'The rule to apply; the one with the least current if left out.',
  })
  rule?: ReformingRuleName | null;
}
