import type { GraphQLResolveInfo } from 'graphql';
import { Arg, Args, Ctx, FieldResolver, Info, Mutation, Resolver, Root } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { carryOut } from '../../api/kit/carryOut.js';
import { loadedField } from '../../api/kit/loadRelations.js';
import { MoneyAmount } from '../../api/kit/money.type.js';
import { PageArgs } from '../../api/kit/pageArgs.js';
import { payloadOf } from '../../api/kit/payloadOf.js';
import { Model } from '../models/model.type.js';
import { moneyAmount } from '../money/moneyAmount.js';
import { PartType } from '../parts/partType.type.js';
import { changePriceNote } from './changePriceNote.js';
import { notePrice } from './notePrice.js';
import { ChangePriceNoteInput, NotePriceInput } from './price.inputs.js';
import { PriceEstimate, PriceNote, PriceNoteConnection } from './price.type.js';

const asPriceNote = { field: 'priceNote', typeName: 'PriceNote' };
const payload = (mutation: string, description: string) =>
  payloadOf(mutation, 'priceNote', () => PriceNote, description);
const NotePricePayload = payload('notePrice', 'The new price note.');
const ChangePriceNotePayload = payload('changePriceNote', 'The price note as it is now.');

@Resolver(() => PriceNote)
export class PriceNoteResolver {
  @FieldResolver(() => MoneyAmount, { description: 'How much, for all of `quantity`.' })
  amount(@Root() note: { amountMinorUnits: number; currency: string }) {
    return moneyAmount(note.amountMinorUnits, note.currency);
  }

  @FieldResolver(() => PartType, { nullable: true, description: 'Of what; null for a model.' })
  partType(@Root() note: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(note, info);
  }

  @FieldResolver(() => Model, { nullable: true, description: 'Of what; null for a part type.' })
  model(@Root() note: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(note, info);
  }

  @Mutation(() => NotePricePayload, { description: 'Notes a price seen or paid somewhere.' })
  notePrice(
    @Arg('input', () => NotePriceInput, { description: 'The price.' }) input: NotePriceInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asPriceNote, (work) => notePrice(work, input));
  }

  @Mutation(() => ChangePriceNotePayload, { description: 'Corrects a price note.' })
  changePriceNote(
    @Arg('input', () => ChangePriceNoteInput, { description: 'The correction.' })
    input: ChangePriceNoteInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asPriceNote, (work) => changePriceNote(work, input));
  }
}

const ofOne = 'What one costs by the prices noted, a currency each; empty when none was noted.';

@Resolver(() => PartType)
export class PricesOfPartTypeResolver {
  @FieldResolver(() => [PriceEstimate], { description: ofOne })
  prices(@Root() partType: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(partType, info);
  }

  @FieldResolver(() => PriceNoteConnection, { description: 'Prices noted, the newest first.' })
  priceNotes(@Root() partType: object, @Args() _args: PageArgs, @Info() info: GraphQLResolveInfo) {
    return loadedField(partType, info);
  }
}

@Resolver(() => Model)
export class PricesOfModelResolver {
  @FieldResolver(() => [PriceEstimate], { description: ofOne })
  prices(@Root() model: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(model, info);
  }

  @FieldResolver(() => PriceNoteConnection, { description: 'Prices noted, the newest first.' })
  priceNotes(@Root() model: object, @Args() _args: PageArgs, @Info() info: GraphQLResolveInfo) {
    return loadedField(model, info);
  }
}
