import { Field, Float, ObjectType } from 'type-graphql';
import { describedEnum } from '../../api/kit/describedEnum.js';
import { CalculationWorking } from './working.type.js';

export const ReformingRuleName = describedEnum(
  'ReformingRuleName',
  'A published rule for re-forming electrolytic capacitors. They disagree.',
  {
    BENCH_MAKER: '30 kilohm for 5 minutes and one more for each month in store.',
    MAKER_NOTE_1993: '10 or 100 kilohm, at most 1 mA, then 4 hours at full voltage.',
    ONE_KILOHM_HALF_HOUR: 'Rated voltage through 1 kilohm for half an hour.',
    EIA_815: '100 ohm or 1 kilohm for an hour, for parts from the store.',
    STEP_BY_STEP: 'In steps with at most 10 mA, stopping at the rated voltage.',
  },
);
export type ReformingRuleName = keyof typeof ReformingRuleName;

@ObjectType({ description: 'A rule as it was published.', simpleResolvers: true })
export class ReformingRule {
  @Field(() => ReformingRuleName, { description: 'Which one.' })
  name!: ReformingRuleName;

  @Field(() => String, { description: 'What it says.' })
  saying!: string;

  @Field(() => String, { description: 'By what it accepts the capacitor.' })
  acceptedWhen!: string;

  @Field(() => String, { description: 'Where it is published.' })
  source!: string;

  @Field(() => Boolean, { description: 'False: from memory.' })
  isConfirmed!: boolean;
}

@ObjectType({ description: 'A voltage to go to and to stay at.', simpleResolvers: true })
export class ReformingStep {
  @Field(() => Float, { description: 'Volts of the supply; never above the rated voltage.' })
  volts!: number;

  @Field(() => Float, {
    nullable: true,
    description: 'Minutes there; null: until the current has fallen to a tenth.',
  })
  minutes!: number | null;
}

@ObjectType({
  description: 'What one published rule comes to for one capacitor.',
  simpleResolvers: true,
})
export class ReformingPlan {
  @Field(() => ReformingRule, { description: 'The rule.' })
  rule!: ReformingRule;

  @Field(() => Float, { description: 'The series resistor, in ohms.' })
  seriesOhms!: number;

  @Field(() => Float, { description: 'Current into a shorted capacitor, in mA: the worst case.' })
  worstMilliamperes!: number;

  @Field(() => Float, { description: 'Heat in the resistor then, in watts.' })
  worstWatts!: number;

  @Field(() => [ReformingStep], { description: 'The schedule, in order.' })
  steps!: ReformingStep[];

  @Field(() => Float, { description: 'Minutes at the full voltage.' })
  minutesAtFullVoltage!: number;

  @Field(() => [String], { description: 'What speaks against it here; empty when nothing does.' })
  remarks!: string[];
}

@ObjectType({
  description: 'How an electrolytic capacitor that lay idle is brought back to its voltage.',
  simpleResolvers: true,
})
export class Reforming {
  @Field(() => ReformingPlan, { description: 'The rule that was applied, and its schedule.' })
  applied!: ReformingPlan;

  @Field(() => [ReformingPlan], { description: 'The other rules, the least current first.' })
  others!: ReformingPlan[];

  @Field(() => String, { description: "What a maker's note says of so long a time in store." })
  byStorage!: string;

  @Field(() => CalculationWorking, { description: 'How it came about.' })
  working!: CalculationWorking;
}
