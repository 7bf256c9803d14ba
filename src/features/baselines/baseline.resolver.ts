import type { GraphQLResolveInfo } from 'graphql';
import { Arg, Ctx, FieldResolver, Float, Info, Mutation, Resolver, Root } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { carryOut } from '../../api/kit/carryOut.js';
import { loadedField } from '../../api/kit/loadRelations.js';
import { MoneyAmount } from '../../api/kit/money.type.js';
import { payloadOf } from '../../api/kit/payloadOf.js';
import { moneyAmount } from '../money/moneyAmount.js';
import { Project } from '../projects/project.type.js';
import { Task } from '../tasks/task.type.js';
import type { BaselineEntity } from './baseline.entity.js';
import { ChangeBaselineInput, KeepBaselineInput } from './baseline.inputs.js';
import { Baseline, BaselineTask } from './baseline.type.js';
import type { BaselineTaskEntity } from './baselineTask.entity.js';
import { changeBaseline } from './changeBaseline.js';
import { keepBaseline } from './keepBaseline.js';

const asBaseline = { field: 'baseline', typeName: 'Baseline' };
const KeepBaselinePayload = payloadOf('keepBaseline', 'baseline', () => Baseline, 'The kept plan.');
const ChangeBaselinePayload = payloadOf(
  'changeBaseline',
  'baseline',
  () => Baseline,
  'The kept plan as it is.',
);

@Resolver(() => Baseline)
export class BaselineResolver {
  @FieldResolver(() => Project, { description: 'The project whose plan it was.' })
  project(@Root() baseline: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(baseline, info);
  }

  @FieldResolver(() => [BaselineTask], { description: 'Its tasks, in the order planned.' })
  tasks(@Root() baseline: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(baseline, info);
  }

  @FieldResolver(() => Float, { description: 'Hours a week that were planned.' })
  hoursPerWeek(@Root() { minutesPerWeek }: BaselineEntity) {
    return minutesPerWeek / 60;
  }

  @FieldResolver(() => MoneyAmount, {
    nullable: true,
    description: 'What the project was planned to cost; null if nothing was said.',
  })
  budget(@Root() { budgetMinorUnits, budgetCurrency }: BaselineEntity) {
    if (budgetMinorUnits === null || budgetCurrency === null) return null;
    return moneyAmount(budgetMinorUnits, budgetCurrency);
  }

  @Mutation(() => KeepBaselinePayload, {
    description: 'Keeps the plan of a project as it is now, to compare with when it has changed.',
  })
  keepBaseline(
    @Arg('input', () => KeepBaselineInput, { description: 'The plan.' }) input: KeepBaselineInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asBaseline, (work) => keepBaseline(work, input));
  }

  @Mutation(() => ChangeBaselinePayload, { description: 'Corrects the remarks on a kept plan.' })
  changeBaseline(
    @Arg('input', () => ChangeBaselineInput, { description: 'The correction.' })
    input: ChangeBaselineInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asBaseline, (work) => changeBaseline(work, input));
  }
}

@Resolver(() => BaselineTask)
export class BaselineTaskResolver {
  @FieldResolver(() => Task, { description: 'The task.' })
  task(@Root() planned: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(planned, info);
  }

  @FieldResolver(() => Float, {
    description: 'Hours that it was to take, by the mean of its estimate then.',
  })
  budgetHours(@Root() { budgetMinutes }: BaselineTaskEntity) {
    return budgetMinutes / 60;
  }
}

@Resolver(() => Project)
export class BaselinesOfProjectResolver {
  @FieldResolver(() => [Baseline], { description: 'Its kept plans, the latest first.' })
  baselines(@Root() project: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(project, info);
  }
}
