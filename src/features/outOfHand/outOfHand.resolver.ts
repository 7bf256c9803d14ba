import type { GraphQLResolveInfo } from 'graphql';
import { Arg, Args, Ctx, FieldResolver, Info, Query, Resolver, Root } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { equalTo } from '../../api/kit/conditions.js';
import { loadedField } from '../../api/kit/loadRelations.js';
import { MoneyAmount } from '../../api/kit/money.type.js';
import { PageArgs } from '../../api/kit/pageArgs.js';
import { rootPage } from '../../api/kit/rootPage.js';
import { Item } from '../items/item.type.js';
import { LoanDirection } from './lossKind.js';
import { moneyAmount } from '../money/moneyAmount.js';
import { Party } from '../parties/party.type.js';
import { disposalReads, loanReads } from './outOfHand.reads.js';
import {
  Disposal,
  DisposalConnection,
  DisposalCost,
  DisposalLine,
  ItemLoss,
  ItemLossConnection,
  ItemWhereabouts,
  Loan,
  LoanConnection,
} from './outOfHand.type.js';

@Resolver(() => Item)
export class OutOfHandOfItemResolver {
  @FieldResolver(() => ItemWhereabouts, {
    description: 'Whether it is at hand, and if not where it is and until when.',
  })
  whereabouts(@Root() item: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(item, info);
  }

  @FieldResolver(() => LoanConnection, {
    description: 'When it was lent to or by somebody, the latest first.',
  })
  loans(@Root() item: object, @Args() _args: PageArgs, @Info() info: GraphQLResolveInfo) {
    return loadedField(item, info);
  }

  @FieldResolver(() => ItemLossConnection, { description: 'When it was missed, latest first.' })
  losses(@Root() item: object, @Args() _args: PageArgs, @Info() info: GraphQLResolveInfo) {
    return loadedField(item, info);
  }
}

@Resolver(() => ItemWhereabouts)
export class WhereaboutsResolver {
  @FieldResolver(() => Party, { nullable: true, description: 'Who has it; null if unknown.' })
  with(@Root() row: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(row, info);
  }
}

@Resolver(() => Loan)
export class LoanResolver {
  @FieldResolver(() => Item, { description: 'What is lent.' })
  item(@Root() loan: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(loan, info);
  }

  @FieldResolver(() => Party, { description: 'Who has it; whose it is where it is lent to us.' })
  borrower(@Root() loan: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(loan, info);
  }

  @Query(() => LoanConnection, { description: 'Loans by the day they began.' })
  loans(
    @Args() args: PageArgs,
    @Arg('isOpen', () => Boolean, {
      nullable: true,
      description: 'True: still out; false: back; left out: both.',
    })
    isOpen: boolean | null,
    @Arg('isOverdue', () => Boolean, {
      defaultValue: false,
      description: 'Only what is out and was due back before today (UTC).',
    })
    isOverdue: boolean,
    @Arg('direction', () => LoanDirection, {
      nullable: true,
      description: 'Only what is lent out, or only what is lent to us; both if left out.',
    })
    direction: LoanDirection | null,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    const today = new Date(context.nowMs).toISOString().slice(0, 10);
    const out = { sql: 'loan.returned_on IS NULL', parameters: [] };
    const back = { sql: 'loan.returned_on IS NOT NULL', parameters: [] };
    return rootPage(context, info, args, {
      ...loanReads,
      from: loanReads.table,
      sortBy: 'loan.lent_on',
      where: [
        ...(typeof isOpen === 'boolean' ? [isOpen ? out : back] : []),
        ...equalTo('loan.direction', direction),
        ...(isOverdue ? [out, { sql: 'loan.due_on < ?', parameters: [today] }] : []),
      ],
    });
  }
}

@Resolver(() => ItemLoss)
export class ItemLossResolver {
  @FieldResolver(() => Item, { description: 'What is missing; ask it for `objectId`.' })
  item(@Root() loss: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(loss, info);
  }
}

interface Priced {
  priceMinorUnits: number;
  currency: string;
}

@Resolver(() => Disposal)
export class DisposalResolver {
  @FieldResolver(() => MoneyAmount, { description: 'The price of the lot.' })
  price(@Root() { priceMinorUnits, currency }: Priced) {
    return moneyAmount(Number(priceMinorUnits), currency);
  }

  @FieldResolver(() => Party, { nullable: true, description: 'To whom; null if unknown.' })
  toParty(@Root() disposal: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(disposal, info);
  }

  @FieldResolver(() => [DisposalLine], { description: 'What went.' })
  lines(@Root() disposal: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(disposal, info);
  }

  @FieldResolver(() => [DisposalCost], { description: 'What it cost to part with it.' })
  costs(@Root() disposal: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(disposal, info);
  }

  @Query(() => DisposalConnection, { description: 'What went out for good, by day.' })
  disposals(@Args() args: PageArgs, @Ctx() context: ApiContext, @Info() info: GraphQLResolveInfo) {
    return rootPage(context, info, args, {
      ...disposalReads,
      from: disposalReads.table,
      sortBy: 'disposal.disposed_on',
    });
  }
}

@Resolver(() => DisposalLine)
export class DisposalLineResolver {
  @FieldResolver(() => Item, { description: 'The item.' })
  item(@Root() line: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(line, info);
  }

  @FieldResolver(() => MoneyAmount, { description: 'What fell to it of the price.' })
  price(@Root() { priceMinorUnits, currency }: Priced) {
    return moneyAmount(Number(priceMinorUnits), currency);
  }
}

@Resolver(() => DisposalCost)
export class DisposalCostResolver {
  @FieldResolver(() => MoneyAmount, { description: 'How much.' })
  amount(@Root() { amountMinorUnits, currency }: { amountMinorUnits: number; currency: string }) {
    return moneyAmount(Number(amountMinorUnits), currency);
  }
}
