import type { GraphQLResolveInfo } from 'graphql';
import {
  Arg,
  Args,
  Ctx,
  FieldResolver,
  ID,
  Info,
  Mutation,
  Query,
  Resolver,
  Root,
} from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { carryOut } from '../../api/kit/carryOut.js';
import { carryOutRemoval } from '../../api/kit/carryOutRemoval.js';
import { loadedField } from '../../api/kit/loadRelations.js';
import { MoneyAmount } from '../../api/kit/money.type.js';
import { PageArgs } from '../../api/kit/pageArgs.js';
import { payloadOf } from '../../api/kit/payloadOf.js';
import { RemovalInput } from '../../api/kit/removal.inputs.js';
import { rootPage } from '../../api/kit/rootPage.js';
import { warned, withWarnings } from '../ceilings/purchaseWarnings.js';
import { moneyAmount } from '../money/moneyAmount.js';
import { Party } from '../parties/party.type.js';
import { ClaimConnection } from '../provenance/claim.type.js';
import { ChangeAcquisitionInput, RecordAcquisitionInput } from './acquisition.inputs.js';
import { acquisitionReads } from './acquisition.reads.js';
import { Acquisition, AcquisitionConnection } from './acquisition.type.js';
import { addLotLine } from './addLotLine.js';
import { changeAcquisition } from './changeAcquisition.js';
import { ExtraCost } from './extraCost.type.js';
import { AddLotLineInput } from './lotLine.inputs.js';
import { LotLineConnection } from './lotLine.type.js';
import { recordAcquisition } from './recordAcquisition.js';
import { removeLotLine } from './removeLotLine.js';

const asLot = { field: 'acquisition', typeName: 'Acquisition' };
const payload = (mutation: string, description: string) =>
  payloadOf(mutation, 'acquisition', () => Acquisition, description);
const RecordAcquisitionPayload = withWarnings(payload('recordAcquisition', 'The new lot.'));
const ChangeAcquisitionPayload = payload('changeAcquisition', 'The lot as it is now.');
const AddLotLinePayload = payload('addLotLine', 'The lot with its new line.');
const RemoveLotLinePayload = payloadOf(
  'removeLotLine',
  'removedId',
  () => ID,
  'What was taken away.',
);

@Resolver(() => Acquisition)
export class AcquisitionResolver {
  @Query(() => AcquisitionConnection, { description: 'Lots that came in, the latest first.' })
  acquisitions(
    @Args() args: PageArgs,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    const { table, columns } = acquisitionReads;
    return rootPage(context, info, args, {
      typeName: 'Acquisition',
      from: table,
      table,
      columns,
      sortBy: 'acquisition.acquired_on',
      direction: 'DESC',
    });
  }

  @FieldResolver(() => MoneyAmount, { description: 'The price of the whole lot.' })
  price(@Root() lot: { priceMinorUnits: number; currency: string }) {
    return moneyAmount(lot.priceMinorUnits, lot.currency);
  }

  @FieldResolver(() => Party, {
    nullable: true,
    description: 'Who it came from; null if not recorded.',
  })
  otherParty(@Root() lot: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(lot, info);
  }

  @FieldResolver(() => [ExtraCost], { description: 'What it cost beside its price.' })
  extraCosts(@Root() lot: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(lot, info);
  }

  @FieldResolver(() => LotLineConnection, {
    description: 'What was in it, with what falls to each.',
  })
  lines(@Root() lot: object, @Args() _args: PageArgs, @Info() info: GraphQLResolveInfo) {
    return loadedField(lot, info);
  }

  @FieldResolver(() => [MoneyAmount], {
    description: 'Price and extra costs together, one amount a currency; nothing is converted.',
  })
  totals(@Root() lot: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(lot, info);
  }

  @FieldResolver(() => ClaimConnection, {
    description: 'What was said of it and of what was in it.',
  })
  claims(@Root() lot: object, @Args() _args: PageArgs, @Info() info: GraphQLResolveInfo) {
    return loadedField(lot, info);
  }

  @Mutation(() => RecordAcquisitionPayload, {
    description: 'A lot comes in, with what was in it, what it cost and what the seller said.',
  })
  async recordAcquisition(
    @Arg('input', () => RecordAcquisitionInput, { description: 'The lot.' })
    input: RecordAcquisitionInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    const answer = await carryOut(context, info, asLot, (work) => recordAcquisition(work, input));
    return warned(context, answer, answer['acquisition'] !== null, () => ({
      amounts: [input.price, ...input.extraCosts.map(({ amount }) => amount)],
      day: input.acquiredOn,
      projectId: null,
    }));
  }

  @Mutation(() => ChangeAcquisitionPayload, {
    description: 'Corrects a lot, its lines or its extra costs; what falls to each line follows.',
  })
  changeAcquisition(
    @Arg('input', () => ChangeAcquisitionInput, { description: 'The change.' })
    input: ChangeAcquisitionInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asLot, (work) => changeAcquisition(work, input));
  }

  @Mutation(() => AddLotLinePayload, {
    description: 'Adds a thing that was in a lot; what falls to the other lines changes with it.',
  })
  addLotLine(
    @Arg('input', () => AddLotLineInput, { description: 'The lot and the thing.' })
    input: AddLotLineInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asLot, (work) => addLotLine(work, input));
  }

  @Mutation(() => RemoveLotLinePayload, {
    description:
      'Takes a line written by mistake out of a lot; what it cost falls to the others, and its item stays. Refused for the only line, and when spares on the shelf came with it.',
  })
  removeLotLine(
    @Arg('input', () => RemovalInput, { description: 'Which.' }) input: RemovalInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOutRemoval(context, info, input.id, (work) => removeLotLine(work, input));
  }
}

@Resolver(() => ExtraCost)
export class ExtraCostResolver {
  @FieldResolver(() => MoneyAmount, { description: 'How much, in the currency it was paid in.' })
  amount(@Root() cost: { amountMinorUnits: number; currency: string }) {
    return moneyAmount(cost.amountMinorUnits, cost.currency);
  }
}
