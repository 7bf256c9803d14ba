import { Field, Float, Int, ObjectType } from 'type-graphql';
import { Basis } from '../../api/kit/basis.type.js';
import { describedEnum } from '../../api/kit/describedEnum.js';
import { FinishForecast, WeekAhead } from './finishForecast.type.js';
import { priceOfWeeksAhead } from './priceOfTrials.js';

@ObjectType({ description: 'Hours to come, as trials give them.', simpleResolvers: true })
export class HoursForecast {
  @Field(() => Float, { description: 'Mean of the trials, in hours.' })
  expectedHours!: number;

  @Field(() => Float, { description: 'As likely to take less as more, in hours.' })
  p50Hours!: number;

  @Field(() => Float, { description: 'Four times out of five it takes no more, in hours.' })
  p80Hours!: number;

  @Field(() => Float, { description: 'Nineteen times out of twenty it takes no more, in hours.' })
  p95Hours!: number;

  @Field(() => Float, { description: 'Variance of the trials, in square hours.' })
  varianceHours!: number;

  @Field(() => Float, {
    description: 'One standard error of the mean, in hours: how far trials put it off by chance.',
  })
  meanStandardErrorHours!: number;

  @Field(() => Float, { description: 'The same for the p80, in hours.' })
  p80StandardErrorHours!: number;

  @Field(() => Float, { description: 'The same for the variance, in square hours.' })
  varianceStandardErrorHours!: number;
}

export const RemainingKind = describedEnum(
  'RemainingKind',
  'What the hours spent so far say of a task’s estimate.',
  {
    FINISHED: 'Done or dropped: nothing is left.',
    WITHIN_ESTIMATE: 'The pessimistic figure has not been passed.',
    REFUTED:
      'The pessimistic figure has been passed: the estimate was wrong, and a new one is due.',
  },
);

@ObjectType({ description: 'An open task in the forecast of its project.', simpleResolvers: true })
export class TaskForecast {
  @Field(() => RemainingKind, { description: 'What the hours spent say of its estimate.' })
  kind!: keyof typeof RemainingKind;

  @Field(() => Float, { description: 'Hours spent on it so far.' })
  spentHours!: number;

  @Field(() => Float, { description: 'What its estimate was multiplied by; 1 for as entered.' })
  multiplier!: number;

  @Field(() => Float, { description: 'Mean of what is left, in hours.' })
  expectedHours!: number;

  @Field(() => Float, { description: 'As likely to take less as more, in hours.' })
  p50Hours!: number;

  @Field(() => Float, {
    description: 'Four times out of five no more than this is left, in hours.',
  })
  p80Hours!: number;

  @Field(() => Float, {
    description: 'Share of trials, 0 to 1, in which it lies on the longest chain of tasks.',
  })
  criticality!: number;
}

@ObjectType({
  description: 'What one task’s uncertainty does to the p80 of its project.',
  simpleResolvers: true,
})
export class TornadoBar {
  @Field(() => Float, { description: 'The project’s p80 hours if the task took its own p10.' })
  lowHours!: number;

  @Field(() => Float, { description: 'The project’s p80 hours if the task took its own p90.' })
  highHours!: number;

  @Field(() => Float, {
    description: 'The project’s p80 hours if the task were sure to take its mean.',
  })
  p80IfCertainHours!: number;
}

@ObjectType({
  description:
    'A whole project by seeded trials over its tasks: hours as a distribution, what is critical, what moves the p80, and when it will be done.',
  simpleResolvers: true,
})
export class ProjectForecast {
  @Field(() => HoursForecast, { description: 'Hours of everything that is left.' })
  hours!: HoursForecast;

  @Field(() => HoursForecast, {
    description: 'Hours of the longest chain of tasks that wait for one another.',
  })
  longestChain!: HoursForecast;

  @Field(() => Float, { description: 'Mean of the hours left by formula, without trials.' })
  analyticMeanHours!: number;

  @Field(() => Float, {
    description: 'Their variance by formula, correlation included, in square hours.',
  })
  analyticVarianceHours!: number;

  @Field(() => Int, { description: 'Trials that were run.' })
  trials!: number;

  @Field(() => FinishForecast, {
    nullable: true,
    description:
      'The finish date at the pace of the person who does the work; null while no pace is known.',
  })
  finish!: FinishForecast | null;

  @Field(() => [WeekAhead], {
    description:
      'How far it comes at that pace, from today to the day by which nineteen of twenty trials are done, or twenty years: by weeks, in longer steps beyond a year. Empty while no pace is known, and when nothing is left.',
    complexity: priceOfWeeksAhead,
  })
  weeksAhead!: WeekAhead[];

  @Field(() => Basis, { description: 'What was counted, and how.' })
  basis!: Basis;
}
