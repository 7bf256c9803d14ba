import type { GraphQLResolveInfo } from 'graphql';
import { Arg, Args, Ctx, FieldResolver, Info, Mutation, Query, Resolver, Root } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { carryOut } from '../../api/kit/carryOut.js';
import { loadedField } from '../../api/kit/loadRelations.js';
import { MoneyAmount } from '../../api/kit/money.type.js';
import { PageArgs } from '../../api/kit/pageArgs.js';
import { loadRelations } from '../../api/kit/loadRelations.js';
import { payloadOf } from '../../api/kit/payloadOf.js';
import type { Row } from '../../api/kit/typeReads.js';
import { Item } from '../items/item.type.js';
import { Model } from '../models/model.type.js';
import { moneyAmount } from '../money/moneyAmount.js';
import { changeValueNote } from './changeValueNote.js';
import type { ItemOutlookEntity } from './itemOutlook.entity.js';
import { noteValue } from './noteValue.js';
import { setItemOutlook } from './setItemOutlook.js';
import { setWorthTerms } from './setWorthTerms.js';
import { usualTerms } from './usualTerms.js';
import type { ValueNoteEntity } from './valueNote.entity.js';
import {
  ChangeValueNoteInput,
  NoteValueInput,
  SetItemOutlookInput,
  SetWorthTermsInput,
} from './worth.inputs.js';
import { worthTermsReads } from './worth.reads.js';
import {
  ItemOutlook,
  ItemWorth,
  ValueNote,
  ValueNoteConnection,
  WorthTerms,
} from './worth.type.js';
import type { WorthTermsEntity } from './worthTerms.entity.js';

const NotePayload = payloadOf('noteValue', 'valueNote', () => ValueNote, 'The new value note.');
const ChangePayload = payloadOf(
  'changeValueNote',
  'valueNote',
  () => ValueNote,
  'It as it is now.',
);
const OutlookPayload = payloadOf(
  'setItemOutlook',
  'outlook',
  () => ItemOutlook,
  'It as it is now.',
);
const TermsPayload = payloadOf(
  'setWorthTerms',
  'worthTerms',
  () => WorthTerms,
  'They as they are.',
);
const asValueNote = { field: 'valueNote', typeName: 'ValueNote' };

const optionalMoney = (minorUnits: number | null, currency: string | null) =>
  minorUnits === null || currency === null ? null : moneyAmount(minorUnits, currency);

@Resolver(() => ValueNote)
export class ValueNoteResolver {
  @FieldResolver(() => MoneyAmount, { description: 'The value.' })
  likely(@Root() { likelyMinorUnits, currency }: ValueNoteEntity) {
    return moneyAmount(likelyMinorUnits, currency);
  }

  @FieldResolver(() => MoneyAmount, { nullable: true, description: 'Low end; null if unsaid.' })
  low(@Root() { lowMinorUnits, currency }: ValueNoteEntity) {
    return optionalMoney(lowMinorUnits, currency);
  }

  @FieldResolver(() => MoneyAmount, { nullable: true, description: 'High end; null if unsaid.' })
  high(@Root() { highMinorUnits, currency }: ValueNoteEntity) {
    return optionalMoney(highMinorUnits, currency);
  }

  @FieldResolver(() => Model, { nullable: true, description: 'Of which model; null for an item.' })
  model(@Root() note: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(note, info);
  }

  @FieldResolver(() => Item, { nullable: true, description: 'Of which item; null for a model.' })
  item(@Root() note: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(note, info);
  }

  @Mutation(() => NotePayload, { description: 'Notes what a model or an item is worth.' })
  noteValue(
    @Arg('input', () => NoteValueInput, { description: 'The value.' }) input: NoteValueInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asValueNote, (work) => noteValue(work, input));
  }

  @Mutation(() => ChangePayload, { description: 'Corrects a value note, or strikes it out.' })
  changeValueNote(
    @Arg('input', () => ChangeValueNoteInput, { description: 'The change.' })
    input: ChangeValueNoteInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asValueNote, (work) => changeValueNote(work, input));
  }
}

@Resolver(() => ItemOutlook)
export class ItemOutlookResolver {
  @FieldResolver(() => MoneyAmount, {
    nullable: true,
    description:
      'What having it finished is worth to the owner beyond its price; null for nothing.',
  })
  premium(@Root() { premiumMinorUnits, premiumCurrency }: ItemOutlookEntity) {
    return optionalMoney(premiumMinorUnits, premiumCurrency);
  }

  @Mutation(() => OutlookPayload, { description: 'Says what the owner alone can say of an item.' })
  setItemOutlook(
    @Arg('input', () => SetItemOutlookInput, { description: 'What is said.' })
    input: SetItemOutlookInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    const asOutlook = { field: 'outlook', typeName: 'ItemOutlook' };
    return carryOut(context, info, asOutlook, (work) => setItemOutlook(work, input));
  }
}

@Resolver(() => WorthTerms)
export class WorthTermsResolver {
  @Query(() => WorthTerms, { description: 'What the owner reckons with throughout.' })
  async worthTerms(@Ctx() context: ApiContext, @Info() info: GraphQLResolveInfo) {
    const { columns, table, typeName } = worthTermsReads;
    const { reader } = context.database;
    const [kept] = await reader.rows<Row>(`SELECT ${columns} FROM ${table} LIMIT 1`);
    const terms = kept ?? { id: 'unsaid', version: 0, ...usualTerms };
    await loadRelations(context, info, typeName, [terms]);
    return terms;
  }

  @FieldResolver(() => MoneyAmount, {
    nullable: true,
    description: 'For an hour of own time; null: own time has no price.',
  })
  hourRate(@Root() { hourRateMinorUnits, hourRateCurrency }: WorthTermsEntity) {
    return optionalMoney(hourRateMinorUnits, hourRateCurrency);
  }

  @Mutation(() => TermsPayload, { description: 'Says what the owner reckons with throughout.' })
  setWorthTerms(
    @Arg('input', () => SetWorthTermsInput, { description: 'What is said.' })
    input: SetWorthTermsInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    const asTerms = { field: 'worthTerms', typeName: 'WorthTerms' };
    return carryOut(context, info, asTerms, (work) => setWorthTerms(work, input));
  }
}

@Resolver(() => Item)
export class WorthOfItemResolver {
  @FieldResolver(() => ValueNoteConnection, { description: 'Values of it alone, newest first.' })
  valueNotes(@Root() item: object, @Args() _args: PageArgs, @Info() info: GraphQLResolveInfo) {
    return loadedField(item, info);
  }

  @FieldResolver(() => ItemOutlook, { nullable: true, description: 'What its owner says of it.' })
  outlook(@Root() item: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(item, info);
  }

  @FieldResolver(() => ItemWorth, {
    nullable: true,
    description: 'What it is worth as it stands, at its target and as parts.',
  })
  worth(@Root() item: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(item, info);
  }
}

@Resolver(() => Model)
export class ValuesOfModelResolver {
  @FieldResolver(() => ValueNoteConnection, {
    description: 'What sets of the model were held to be worth, newest first.',
  })
  valueNotes(@Root() model: object, @Args() _args: PageArgs, @Info() info: GraphQLResolveInfo) {
    return loadedField(model, info);
  }
}
