import type { GraphQLResolveInfo } from 'graphql';
import { Arg, Args, Ctx, FieldResolver, Info, Mutation, Resolver, Root } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { carryOut } from '../../api/kit/carryOut.js';
import { optionalRecordId } from '../../api/kit/globalId.js';
import { loadedField } from '../../api/kit/loadRelations.js';
import { MoneyAmount } from '../../api/kit/money.type.js';
import { PageArgs } from '../../api/kit/pageArgs.js';
import { payloadOf } from '../../api/kit/payloadOf.js';
import { warned, withWarnings } from '../ceilings/purchaseWarnings.js';
import { Item } from '../items/item.type.js';
import { moneyAmount } from '../money/moneyAmount.js';
import { Party } from '../parties/party.type.js';
import { Project } from '../projects/project.type.js';
import { changeExpense } from './changeExpense.js';
import { ChangeExpenseInput, RecordExpenseInput } from './expense.inputs.js';
import { Expense, ExpenseConnection } from './expense.type.js';
import { recordExpense } from './recordExpense.js';

const asExpense = { field: 'expense', typeName: 'Expense' };
const payload = (mutation: string, description: string) =>
  payloadOf(mutation, 'expense', () => Expense, description);
const RecordExpensePayload = withWarnings(payload('recordExpense', 'The new expense.'));
const ChangeExpensePayload = payload('changeExpense', 'The expense as it is now.');

@Resolver(() => Expense)
export class ExpenseResolver {
  @FieldResolver(() => MoneyAmount, { description: 'How much; below zero for money come back.' })
  amount(@Root() expense: { amountMinorUnits: number; currency: string }) {
    return moneyAmount(expense.amountMinorUnits, expense.currency);
  }

  @FieldResolver(() => Item, { description: 'The item that it was for.' })
  item(@Root() expense: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(expense, info);
  }

  @FieldResolver(() => Project, { nullable: true, description: 'Within which project; or null.' })
  project(@Root() expense: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(expense, info);
  }

  @FieldResolver(() => Party, {
    nullable: true,
    description: 'Who was paid; null if not recorded.',
  })
  paidTo(@Root() expense: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(expense, info);
  }

  @Mutation(() => RecordExpensePayload, {
    description: 'Money spent on an item; below zero for money that came back.',
  })
  async recordExpense(
    @Arg('input', () => RecordExpenseInput, { description: 'The expense.' })
    input: RecordExpenseInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    const answer = await carryOut(context, info, asExpense, (work) => recordExpense(work, input));
    return warned(context, answer, answer['expense'] !== null, () => ({
      amounts: [input.amount],
      day: input.spentOn,
      projectId: optionalRecordId('Project', input.projectId ?? null, ['projectId']),
    }));
  }

  @Mutation(() => ChangeExpensePayload, {
    description: 'Corrects an expense; zero, with a note, for one that never was.',
  })
  changeExpense(
    @Arg('input', () => ChangeExpenseInput, { description: 'The change.' })
    input: ChangeExpenseInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asExpense, (work) => changeExpense(work, input));
  }
}

@Resolver(() => Item)
export class ExpensesOfItemResolver {
  @FieldResolver(() => ExpenseConnection, { description: 'Money spent on it, the latest first.' })
  expenses(@Root() item: object, @Args() _args: PageArgs, @Info() info: GraphQLResolveInfo) {
    return loadedField(item, info);
  }
}
