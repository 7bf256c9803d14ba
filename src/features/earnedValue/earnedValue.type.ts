import { GraphQLLocalDate } from 'graphql-scalars';
import { Field, Float, ObjectType } from 'type-graphql';
import { Basis } from '../../api/kit/basis.type.js';
import { describedEnum } from '../../api/kit/describedEnum.js';
import { MoneyAmount } from '../../api/kit/money.type.js';

@ObjectType({
  description: 'The indices of earned value; null where one is not defined.',
  simpleResolvers: true,
})
export class EarnedValueIndices {
  @Field(() => Float, {
    nullable: true,
    description: 'CPI, earned over spent: below 1, it takes more than planned.',
  })
  costPerformance!: number | null;

  @Field(() => Float, {
    nullable: true,
    description: 'SPI, earned over planned: below 1, it is behind. Drifts to 1 near the end.',
  })
  schedulePerformance!: number | null;

  @Field(() => Float, {
    nullable: true,
    description: 'The rate that the rest must keep to meet the budget; null when it is spent.',
  })
  toCompleteForBudget!: number | null;
}

@ObjectType({ description: 'Earned value in hours.', simpleResolvers: true })
export class EarnedHours {
  @Field(() => Float, { description: 'BAC: budget of all tasks not dropped, in hours.' })
  budgetHours!: number;

  @Field(() => Float, {
    nullable: true,
    description:
      'PV: hours that the kept plan wanted done by now; tasks added since count as they are earned. Null without a kept plan.',
  })
  plannedHours!: number | null;

  @Field(() => Float, { description: 'EV: hours of the budget that are earned.' })
  earnedHours!: number;

  @Field(() => Float, { description: 'AC: hours spent on its tasks, dropped ones too.' })
  spentHours!: number;

  @Field(() => Float, { description: 'CV: earned less spent, in hours.' })
  costVarianceHours!: number;

  @Field(() => Float, { nullable: true, description: 'SV: earned less planned, in hours.' })
  scheduleVarianceHours!: number | null;

  @Field(() => EarnedValueIndices, { description: 'CPI, SPI and what the rest must keep to.' })
  indices!: EarnedValueIndices;

  @Field(() => Float, {
    nullable: true,
    description: 'EAC in hours if the rest goes as the work so far: BAC / CPI.',
  })
  estimateAtCompletionHours!: number | null;

  @Field(() => Float, { description: 'EAC in hours if the rest goes as budgeted: AC + BAC − EV.' })
  estimateAtBudgetedRateHours!: number;

  @Field(() => Float, {
    nullable: true,
    description: 'EAC in hours if both rates weigh on the rest: AC + (BAC − EV) / (CPI × SPI).',
  })
  estimateAtBothRatesHours!: number | null;
}

@ObjectType({
  description: 'Earned value in money, earned and planned in proportion to the hours.',
  simpleResolvers: true,
})
export class EarnedMoney {
  @Field(() => MoneyAmount, {
    description: 'BAC: the budget of the kept plan, else the ceiling of the project.',
  })
  budget!: MoneyAmount;

  @Field(() => MoneyAmount, { nullable: true, description: 'PV; null without a kept plan.' })
  planned!: MoneyAmount | null;

  @Field(() => MoneyAmount, { description: 'EV: the budget times the share of hours earned.' })
  earned!: MoneyAmount;

  @Field(() => MoneyAmount, { description: 'AC: expenses of the project in this currency.' })
  spent!: MoneyAmount;

  @Field(() => EarnedValueIndices, { description: 'CPI, SPI and what the rest must keep to.' })
  indices!: EarnedValueIndices;

  @Field(() => MoneyAmount, {
    nullable: true,
    description: 'EAC if the rest costs as the work so far did: BAC / CPI.',
  })
  estimateAtCompletion!: MoneyAmount | null;
}

@ObjectType({ description: 'A day of the burn-up, ready to plot.', simpleResolvers: true })
export class BurnUpPoint {
  @Field(() => GraphQLLocalDate, { description: 'At the end of this day, or now for today.' })
  on!: string;

  @Field(() => Float, {
    description: 'Hours in the project as it then was: tasks not dropped, by the estimate then.',
  })
  scopeHours!: number;

  @Field(() => Float, {
    nullable: true,
    description: 'Hours that the kept plan, as it was kept, wanted done; null without one.',
  })
  plannedHours!: number | null;

  @Field(() => Float, { description: 'Hours earned.' })
  earnedHours!: number;

  @Field(() => Float, { description: 'Hours spent.' })
  spentHours!: number;
}

export const PlanChangeKind = describedEnum(
  'PlanChangeKind',
  'How a project departs from its kept plan: by what is to be done, or by what it takes.',
  {
    ADDED: 'A task that the plan did not have: scope growth, by its first estimate.',
    DROPPED: 'A task of the plan that was dropped: scope that went, by its budget.',
    OVERRUN: 'The same work takes more than its budget, by hours spent and still expected.',
    SAVED: 'The same work takes less than its budget.',
  },
);

@ObjectType({ description: 'One departure from the kept plan.', simpleResolvers: true })
export class PlanChange {
  @Field(() => PlanChangeKind, { description: 'Scope, or what the same work takes.' })
  kind!: keyof typeof PlanChangeKind;

  @Field(() => Float, { description: 'Hours that it adds to the whole; below 0: it takes away.' })
  hours!: number;
}

@ObjectType({
  description: 'From the kept plan to what the project will have taken; the parts add up.',
  simpleResolvers: true,
})
export class PlanBridge {
  @Field(() => Float, { description: 'Hours of the kept plan.' })
  baselineHours!: number;

  @Field(() => Float, { description: 'Scope growth: tasks added less tasks dropped, in hours.' })
  scopeGrowthHours!: number;

  @Field(() => Float, {
    description: 'The same work taking more (below 0: less) than its budget, in hours.',
  })
  overrunHours!: number;

  @Field(() => Float, {
    description:
      'Hours spent and still expected on the estimates as entered: the sum of the three.',
  })
  expectedAtCompletionHours!: number;
}

@ObjectType({
  description: 'Earned value of a project: against its kept plan where it has one.',
  simpleResolvers: true,
})
export class EarnedValue {
  @Field(() => EarnedHours, { description: 'In hours.' })
  hours!: EarnedHours;

  @Field(() => EarnedMoney, {
    nullable: true,
    description: 'In money; null where neither the kept plan nor the project has a budget.',
  })
  money!: EarnedMoney | null;

  @Field(() => [BurnUpPoint], {
    description: 'By weeks back from today, oldest first; longer steps beyond five years.',
  })
  burnUp!: BurnUpPoint[];

  @Field(() => Basis, { description: 'What was counted, and how.' })
  basis!: Basis;
}
