import { Field, Float, ObjectType } from 'type-graphql';
import { describedEnum } from '../../api/kit/describedEnum.js';
import { CalculationWorking } from './working.type.js';

export const LeakageMeasure = describedEnum('LeakageMeasure', 'What was measured.', {
  EARTH_BOND: 'Resistance from the earth pin to the chassis.',
  INSULATION: 'Insulation of the line conductors from the chassis.',
  TOUCH_CURRENT: 'Current from the chassis to earth.',
});
export type LeakageMeasure = keyof typeof LeakageMeasure;

export const LimitOutcome = describedEnum(
  'LimitOutcome',
  'Where a reading lies. Neither word says that nothing can happen.',
  {
    KEPT: 'The reading keeps to the limit, the end included.',
    BROKEN: 'The reading breaks the limit.',
    NOT_MEASURED: 'No reading was given for it.',
  },
);
export type LimitOutcome = keyof typeof LimitOutcome;

@ObjectType({
  description: 'A published limit and what a reading says to it.',
  simpleResolvers: true,
})
export class LeakageLimit {
  @Field(() => LeakageMeasure, { description: 'What it limits.' })
  measure!: LeakageMeasure;

  @Field(() => String, { description: 'Whose rule it is.' })
  rule!: string;

  @Field(() => Float, { description: 'The limit, in `unit`.' })
  limit!: number;

  @Field(() => String, { description: 'Ohm, MOhm or mA.' })
  unit!: string;

  @Field(() => Boolean, { description: 'True: at most so much; false: at least.' })
  isUpper!: boolean;

  @Field(() => LimitOutcome, { description: 'What the reading says to it.' })
  outcome!: LimitOutcome;

  @Field(() => String, { description: 'Where it is published.' })
  source!: string;

  @Field(() => Boolean, { description: 'False: from memory.' })
  isConfirmed!: boolean;
}

@ObjectType({
  description: 'Earth bond, insulation and touch current against the published limits.',
  simpleResolvers: true,
})
export class Leakage {
  @Field(() => [LeakageLimit], { description: 'Every published limit that we know.' })
  limits!: LeakageLimit[];

  @Field(() => Float, {
    nullable: true,
    description:
      'What would flow through the insulation at the mains voltage, in mA; null if it was not measured or is 0.',
  })
  throughInsulationMilliamperes!: number | null;

  @Field(() => CalculationWorking, { description: 'How it came about.' })
  working!: CalculationWorking;
}
