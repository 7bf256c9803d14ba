import { Field, Float, ObjectType } from 'type-graphql';
import { CalculationWorking } from './working.type.js';

@ObjectType({
  description:
    'How a bank of capacitors stands to one published threshold. The thresholds differ; keep to the strictest that applies.',
  simpleResolvers: true,
})
export class CapacitorThreshold {
  @Field(() => String, { description: 'Whose rule it is.' })
  rule!: string;

  @Field(() => String, { description: 'Where it draws the line, in words.' })
  limit!: string;

  @Field(() => Float, {
    description: 'The voltage, in volts, at and above which this bank is over the line.',
  })
  volts!: number;

  @Field(() => Boolean, { description: 'Over the line when the discharge begins.' })
  isOverAtStart!: boolean;

  @Field(() => Boolean, { description: 'Still over it at the voltage asked for.' })
  isOverAtTarget!: boolean;

  @Field(() => Float, { description: 'Seconds until it is under the line; 0 if it always was.' })
  secondsUntilUnder!: number;

  @Field(() => Float, {
    nullable: true,
    description: 'Seconds in which the rule wants it under; null for a rule without a time.',
  })
  allowedSeconds!: number | null;

  @Field(() => Boolean, {
    description:
      'The rule is passed: under the line at the voltage asked for, or within the seconds allowed. False: failed.',
  })
  isKept!: boolean;

  @Field(() => String, { description: 'Where the rule is published.' })
  source!: string;

  @Field(() => Boolean, {
    description: 'False: from memory or in part so, compared with no published page.',
  })
  isConfirmed!: boolean;
}

@ObjectType({
  description: 'A bank of capacitors that a bleeder discharges.',
  simpleResolvers: true,
})
export class DischargeTime {
  @Field(() => Float, { description: 'Seconds from the first voltage to the second.' })
  seconds!: number;

  @Field(() => Float, { description: 'Resistance times capacitance, in seconds.' })
  timeConstantSeconds!: number;

  @Field(() => Float, { description: 'Joules stored at the start.' })
  joulesAtStart!: number;

  @Field(() => Float, { description: 'Joules left at the voltage asked for.' })
  joulesAtTarget!: number;

  @Field(() => Float, { description: 'Heat in the bleeder at the first voltage, in watts.' })
  bleederWatts!: number;

  @Field(() => [CapacitorThreshold], { description: 'Every published threshold that we know.' })
  thresholds!: CapacitorThreshold[];

  @Field(() => CapacitorThreshold, {
    nullable: true,
    description: 'The rule with the longest wait; null when none is over at the start.',
  })
  longestWait!: CapacitorThreshold | null;

  @Field(() => CalculationWorking, { description: 'How it came about.' })
  working!: CalculationWorking;
}

@ObjectType({
  description: 'A bleeder that brings a bank to a voltage in a stated time.',
  simpleResolvers: true,
})
export class BleederResistor {
  @Field(() => Float, { description: 'The largest resistance that is fast enough, in ohms.' })
  mostOhms!: number;

  @Field(() => Float, { description: 'Heat in that one at the working voltage, in watts.' })
  wattsAtMostOhms!: number;

  @Field(() => Float, { description: 'The next lower value of the series, in ohms.' })
  madeOhms!: number;

  @Field(() => Float, { description: 'Heat in the one made, in watts.' })
  madeWatts!: number;

  @Field(() => Float, { description: 'Seconds that the one made takes.' })
  madeSeconds!: number;

  @Field(() => Float, { description: 'Current that it draws all the time, in mA.' })
  drawMilliamperes!: number;

  @Field(() => Float, { description: 'The rating to buy, in watts: twice the heat.' })
  ratedWatts!: number;

  @Field(() => CalculationWorking, { description: 'How it came about.' })
  working!: CalculationWorking;
}
