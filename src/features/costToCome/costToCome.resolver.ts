import type { GraphQLResolveInfo } from 'graphql';
import { Arg, Ctx, FieldResolver, Info, Mutation, Resolver, Root } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { carryOut } from '../../api/kit/carryOut.js';
import { loadedField } from '../../api/kit/loadRelations.js';
import { MoneyAmount } from '../../api/kit/money.type.js';
import { payloadOf } from '../../api/kit/payloadOf.js';
import { priceOfTrials } from '../forecast/priceOfTrials.js';
import { moneyAmount } from '../money/moneyAmount.js';
import { Project } from '../projects/project.type.js';
import { changePlannedCost } from './changePlannedCost.js';
import { CostToCome, PlannedCost } from './costToCome.type.js';
import { planCost } from './planCost.js';
import type { PlannedCostEntity } from './plannedCost.entity.js';
import { ChangePlannedCostInput, PlanCostInput } from './plannedCost.inputs.js';

const asCost = { field: 'plannedCost', typeName: 'PlannedCost' };
const payload = (mutation: string, description: string) =>
  payloadOf(mutation, 'plannedCost', () => PlannedCost, description);
const PlanCostPayload = payload('planCost', 'The new planned cost.');
const ChangePlannedCostPayload = payload('changePlannedCost', 'It as it is now.');

@Resolver(() => PlannedCost)
export class PlannedCostResolver {
  @FieldResolver(() => MoneyAmount, { description: 'If all goes well.' })
  optimistic(@Root() cost: PlannedCostEntity) {
    return moneyAmount(cost.optimisticMinorUnits, cost.currency);
  }

  @FieldResolver(() => MoneyAmount, { description: 'Most likely.' })
  likely(@Root() cost: PlannedCostEntity) {
    return moneyAmount(cost.likelyMinorUnits, cost.currency);
  }

  @FieldResolver(() => MoneyAmount, { description: 'If little goes well.' })
  pessimistic(@Root() cost: PlannedCostEntity) {
    return moneyAmount(cost.pessimisticMinorUnits, cost.currency);
  }

  @FieldResolver(() => Project, { description: 'The project that will have it.' })
  project(@Root() cost: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(cost, info);
  }

  @Mutation(() => PlanCostPayload, { description: 'Plans a cost of a project.' })
  planCost(
    @Arg('input', () => PlanCostInput, { description: 'The cost.' }) input: PlanCostInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asCost, (work) => planCost(work, input));
  }

  @Mutation(() => ChangePlannedCostPayload, { description: 'Changes or settles a planned cost.' })
  changePlannedCost(
    @Arg('input', () => ChangePlannedCostInput, { description: 'The change.' })
    input: ChangePlannedCostInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asCost, (work) => changePlannedCost(work, input));
  }
}

@Resolver(() => Project)
export class CostsOfProjectResolver {
  @FieldResolver(() => [PlannedCost], { description: 'Costs planned, settled or not, as planned.' })
  plannedCosts(@Root() project: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(project, info);
  }

  @FieldResolver(() => CostToCome, {
    nullable: true,
    complexity: priceOfTrials,
    description: 'What it will still cost: parts, services, consumables, and own time if priced.',
  })
  costToCome(@Root() project: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(project, info);
  }
}
