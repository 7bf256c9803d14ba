import type { GraphQLResolveInfo } from 'graphql';
import {
  Arg,
  Ctx,
  FieldResolver,
  Float,
  Info,
  Mutation,
  Query,
  Resolver,
  Root,
} from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { carryOut } from '../../api/kit/carryOut.js';
import { loadedField, loadRelations } from '../../api/kit/loadRelations.js';
import { payloadOf } from '../../api/kit/payloadOf.js';
import { rotation } from '../../domain/use/rotation.js';
import { readyShack } from '../../domain/shack/shackModel.js';
import { Item } from '../items/item.type.js';
import { Rig } from '../items/rig.type.js';
import { readShack } from '../shack/readShack.js';
import { addMaintenanceRule } from './addMaintenanceRule.js';
import { changeMaintenanceRule } from './changeMaintenanceRule.js';
import { readMaintenanceRules } from './maintenanceRules.reads.js';
import { recordMaintenance } from './recordMaintenance.js';
import { readSpells } from './spells.reads.js';
import {
  AddMaintenanceRuleInput,
  ChangeMaintenanceRuleInput,
  RecordMaintenanceInput,
} from './use.inputs.js';
import { MaintenanceRule, RotationRig } from './use.type.js';

const DAY_MS = 86_400_000;
const asRule = { field: 'rule', typeName: 'MaintenanceRule' };
const rulePayload = (mutation: string) =>
  payloadOf(mutation, 'rule', () => MaintenanceRule, 'The rule, and how near it is.');
const AddMaintenanceRulePayload = rulePayload('addMaintenanceRule');
const ChangeMaintenanceRulePayload = rulePayload('changeMaintenanceRule');
const RecordMaintenancePayload = rulePayload('recordMaintenance');

@Resolver(() => MaintenanceRule)
export class MaintenanceResolver {
  @Query(() => [MaintenanceRule], {
    description: 'What falls due, by hours of use or by the calendar, the most overdue first.',
  })
  async maintenanceDue(
    @Arg('fromShare', () => Float, {
      defaultValue: 1,
      description: 'From this much of the interval on: 1 is due, 0.8 is soon.',
    })
    fromShare: number,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    const all = await readMaintenanceRules(context.database.reader, context.nowMs, 'all in use');
    const share = (row: Record<string, unknown>) => row['share'] as number;
    const due = all
      .filter((row) => share(row) >= fromShare)
      .sort((left, right) => share(right) - share(left));
    await loadRelations(context, info, 'MaintenanceRule', due);
    return due;
  }

  @FieldResolver(() => Item, { description: 'The rig or accessory that it is done on.' })
  item(@Root() rule: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(rule, info);
  }

  @Mutation(() => AddMaintenanceRulePayload, {
    description: 'Names something to be done again and again, by use or by the calendar.',
  })
  addMaintenanceRule(
    @Arg('input', () => AddMaintenanceRuleInput, { description: 'What, and how often.' })
    input: AddMaintenanceRuleInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asRule, (work) => addMaintenanceRule(work, input));
  }

  @Mutation(() => ChangeMaintenanceRulePayload, { description: 'Changes or ends a rule.' })
  changeMaintenanceRule(
    @Arg('input', () => ChangeMaintenanceRuleInput, { description: 'The change.' })
    input: ChangeMaintenanceRuleInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asRule, (work) => changeMaintenanceRule(work, input));
  }

  @Mutation(() => RecordMaintenancePayload, {
    description: 'Writes down that a rule was followed.',
  })
  recordMaintenance(
    @Arg('input', () => RecordMaintenanceInput, { description: 'Which rule, and when.' })
    input: RecordMaintenanceInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asRule, (work) => recordMaintenance(work, input));
  }
}

@Resolver(() => RotationRig)
export class RotationResolver {
  @Query(() => [RotationRig], {
    description: 'The rigs that are ready, each looked at alone: the longest idle first.',
  })
  async rotation(@Ctx() context: ApiContext, @Info() info: GraphQLResolveInfo) {
    const { reader } = context.database;
    const { model } = await readShack(reader, context.nowMs);
    const ready = readyShack(model).rigs.map(({ rigId }) => rigId);
    const spells = await readSpells(reader, ready);
    const rested = ready.map((rigId) => ({
      id: rigId,
      rigId,
      inventoryNumber: model.items.get(rigId)?.name ?? rigId,
      lastUsedAtMs: spells.get(rigId)?.at(-1)?.startedAtMs ?? null,
    }));
    const rows = rotation(rested).map(({ lastUsedAtMs, ...row }) => ({
      ...row,
      lastUsedAt: lastUsedAtMs === null ? null : new Date(lastUsedAtMs).toISOString(),
      idleDays: lastUsedAtMs === null ? null : Math.floor((context.nowMs - lastUsedAtMs) / DAY_MS),
    }));
    await loadRelations(context, info, 'RotationRig', rows);
    return rows;
  }

  @FieldResolver(() => Rig, { description: 'The rig.' })
  rig(@Root() rested: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(rested, info);
  }
}
