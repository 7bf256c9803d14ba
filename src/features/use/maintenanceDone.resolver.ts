import type { GraphQLResolveInfo } from 'graphql';
import { Arg, Ctx, FieldResolver, Info, Mutation, Resolver, Root } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { carryOut } from '../../api/kit/carryOut.js';
import { loadedField } from '../../api/kit/loadRelations.js';
import { payloadOf } from '../../api/kit/payloadOf.js';
import { Party } from '../parties/party.type.js';
import { changeMaintenanceDone } from './changeMaintenanceDone.js';
import { MaintenanceDone } from './maintenanceDone.type.js';
import { ChangeMaintenanceDoneInput } from './use.inputs.js';
import { MaintenanceRule } from './use.type.js';

const ChangeMaintenanceDonePayload = payloadOf(
  'changeMaintenanceDone',
  'rule',
  () => MaintenanceRule,
  'The rule, and how near it is now.',
);

@Resolver(() => MaintenanceRule)
export class DoneOfRuleResolver {
  @FieldResolver(() => [MaintenanceDone], {
    description: 'When it was done, the latest first; what was taken back stays to be seen.',
  })
  done(@Root() rule: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(rule, info);
  }
}

@Resolver(() => MaintenanceDone)
export class MaintenanceDoneResolver {
  @FieldResolver(() => Party, { nullable: true, description: 'Who did it; null if unsaid.' })
  doneBy(@Root() done: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(done, info);
  }

  @Mutation(() => ChangeMaintenanceDonePayload, {
    description: 'Corrects what was done for a rule, or takes it back.',
  })
  changeMaintenanceDone(
    @Arg('input', () => ChangeMaintenanceDoneInput, { description: 'The correction.' })
    input: ChangeMaintenanceDoneInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    const asRule = { field: 'rule', typeName: 'MaintenanceRule' };
    return carryOut(context, info, asRule, (work) => changeMaintenanceDone(work, input));
  }
}
