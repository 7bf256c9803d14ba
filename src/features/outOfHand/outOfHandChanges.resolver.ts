import type { GraphQLResolveInfo } from 'graphql';
import { Arg, Ctx, Info, Mutation, Resolver } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { carryOut } from '../../api/kit/carryOut.js';
import { payloadOf } from '../../api/kit/payloadOf.js';
import { changeDisposal } from './changeDisposal.js';
import { changeLoan } from './changeLoan.js';
import { changeLoss } from './changeLoss.js';
import { ChangeDisposalInput, RecordDisposalInput } from './disposal.inputs.js';
import { ChangeLossInput, ReportLossInput } from './itemLoss.inputs.js';
import { borrowItem, lendItem } from './lendItem.js';
import { BorrowItemInput, ChangeLoanInput, LendItemInput } from './loan.inputs.js';
import { Disposal, ItemLoss, Loan } from './outOfHand.type.js';
import { recordDisposal } from './recordDisposal.js';
import { reportLoss } from './reportLoss.js';

const asLoan = { field: 'loan', typeName: 'Loan' };
const asLoss = { field: 'loss', typeName: 'ItemLoss' };
const asDisposal = { field: 'disposal', typeName: 'Disposal' };
const LendItemPayload = payloadOf('lendItem', 'loan', () => Loan, 'The loan.');
const BorrowItemPayload = payloadOf('borrowItem', 'loan', () => Loan, 'The loan.');
const ChangeLoanPayload = payloadOf('changeLoan', 'loan', () => Loan, 'The loan as it is now.');
const ReportLossPayload = payloadOf('reportLoss', 'loss', () => ItemLoss, 'The loss.');
const ChangeLossPayload = payloadOf('changeLoss', 'loss', () => ItemLoss, 'The loss as it is now.');
const disposalPayload = (mutation: string) =>
  payloadOf(mutation, 'disposal', () => Disposal, 'The lot that went out.');
const RecordDisposalPayload = disposalPayload('recordDisposal');
const ChangeDisposalPayload = disposalPayload('changeDisposal');

@Resolver()
export class OutOfHandChangesResolver {
  @Mutation(() => LendItemPayload, { description: 'Lends an item to somebody.' })
  lendItem(
    @Arg('input', () => LendItemInput, { description: 'The loan.' }) input: LendItemInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asLoan, (work) => lendItem(work, input));
  }

  @Mutation(() => BorrowItemPayload, {
    description: 'Writes down that an item in the collection is lent to us by somebody.',
  })
  borrowItem(
    @Arg('input', () => BorrowItemInput, { description: 'The loan.' }) input: BorrowItemInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asLoan, (work) => borrowItem(work, input));
  }

  @Mutation(() => ChangeLoanPayload, {
    description: 'Corrects a loan, or writes down that the item is back (`returnedOn`).',
  })
  changeLoan(
    @Arg('input', () => ChangeLoanInput, { description: 'The change.' }) input: ChangeLoanInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asLoan, (work) => changeLoan(work, input));
  }

  @Mutation(() => ReportLossPayload, {
    description:
      'Writes down that an item was stolen or is lost; `loss { item { objectId } }` is the sheet ' +
      'for the police and the insurer.',
  })
  reportLoss(
    @Arg('input', () => ReportLossInput, { description: 'The loss.' }) input: ReportLossInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asLoss, (work) => reportLoss(work, input));
  }

  @Mutation(() => ChangeLossPayload, {
    description: 'Corrects a loss, or writes down that the item was found (`foundOn`).',
  })
  changeLoss(
    @Arg('input', () => ChangeLossInput, { description: 'The change.' }) input: ChangeLossInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asLoss, (work) => changeLoss(work, input));
  }

  @Mutation(() => RecordDisposalPayload, {
    description: 'A lot goes out for good: its items leave the collection, their records stay.',
  })
  recordDisposal(
    @Arg('input', () => RecordDisposalInput, { description: 'The lot.' })
    input: RecordDisposalInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asDisposal, (work) => recordDisposal(work, input));
  }

  @Mutation(() => ChangeDisposalPayload, {
    description: 'Corrects when and to whom a lot went, at what price, and what fell to each item.',
  })
  changeDisposal(
    @Arg('input', () => ChangeDisposalInput, { description: 'The change.' })
    input: ChangeDisposalInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asDisposal, (work) => changeDisposal(work, input));
  }
}
