import type { GraphQLResolveInfo } from 'graphql';
import { GraphQLLocalDate } from 'graphql-scalars';
import { Arg, Ctx, FieldResolver, ID, Info, Mutation, Query, Resolver, Root } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { argumentProblem, readArguments } from '../../api/kit/argumentProblem.js';
import { carryOut } from '../../api/kit/carryOut.js';
import { optionalRecordId } from '../../api/kit/globalId.js';
import { loadRelations } from '../../api/kit/loadRelations.js';
import { MoneyAmount, MoneyInput } from '../../api/kit/money.type.js';
import { payloadOf } from '../../api/kit/payloadOf.js';
import type { Row } from '../../api/kit/typeReads.js';
import { parseAmount } from '../../domain/money/parseAmount.js';
import { moneyAmount } from '../money/moneyAmount.js';
import { exponentOf } from '../rates/rateTable.reads.js';
import { spendingCeilingReads } from './ceiling.reads.js';
import { CeilingStanding, SetSpendingCeilingInput, SpendingCeiling } from './ceilings.type.js';
import { ceilingsAfter } from './ceilingsAfter.js';
import { setSpendingCeiling } from './setSpendingCeiling.js';
import type { SpendingCeilingEntity } from './spendingCeiling.entity.js';

const SetPayload = payloadOf(
  'setSpendingCeiling',
  'spendingCeiling',
  () => SpendingCeiling,
  'The ceiling as it is now.',
);

@Resolver(() => SpendingCeiling)
export class CeilingsResolver {
  @Query(() => [SpendingCeiling], { description: 'Ceilings on months and years.' })
  async spendingCeilings(@Ctx() context: ApiContext, @Info() info: GraphQLResolveInfo) {
    const { columns, table, typeName } = spendingCeilingReads;
    const { reader } = context.database;
    const rows = await reader.rows<Row>(`SELECT ${columns} FROM ${table} ORDER BY period`);
    await loadRelations(context, info, typeName, rows);
    return rows;
  }

  @Query(() => [CeilingStanding], {
    description:
      'Where spending an amount would leave the ceilings of a project, its month and its year. It warns and refuses nothing.',
  })
  purchaseWarning(
    @Arg('amount', () => MoneyInput, { description: 'What would be spent.' }) money: MoneyInput,
    @Arg('on', () => GraphQLLocalDate, { nullable: true, description: 'Today if left out.' })
    on: string | null | undefined,
    @Arg('projectId', () => ID, { nullable: true, description: 'Within which project, if any.' })
    projectId: string | null | undefined,
    @Ctx() { database, nowMs }: ApiContext,
  ) {
    const parsed = parseAmount(money.amount, exponentOf(money.currency));
    if (parsed.kind === 'refused') throw argumentProblem(parsed.why);
    const id = readArguments(() => optionalRecordId('Project', projectId ?? null, ['projectId']));
    const day = on ?? new Date(nowMs).toISOString().slice(0, 10);
    const amounts = [{ minorUnits: parsed.minorUnits, currency: money.currency }];
    const purchase = { amounts, day, projectId: id, isRecorded: false };
    return ceilingsAfter(database.reader, purchase, nowMs);
  }

  @FieldResolver(() => MoneyAmount, { nullable: true, description: 'The most; null for none.' })
  amount(@Root() { amountMinorUnits, currency }: SpendingCeilingEntity) {
    return amountMinorUnits === null ? null : moneyAmount(amountMinorUnits, currency);
  }

  @Mutation(() => SetPayload, { description: 'Sets the most to spend in any month or year.' })
  setSpendingCeiling(
    @Arg('input', () => SetSpendingCeilingInput, { description: 'The ceiling.' })
    input: SetSpendingCeilingInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    const asCeiling = { field: 'spendingCeiling', typeName: 'SpendingCeiling' };
    return carryOut(context, info, asCeiling, (work) => setSpendingCeiling(work, input));
  }
}
