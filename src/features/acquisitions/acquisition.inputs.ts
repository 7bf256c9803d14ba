import { GraphQLLocalDate } from 'graphql-scalars';
import { Field, ID, InputType, Int } from 'type-graphql';
import { MoneyInput } from '../../api/kit/money.type.js';
import { PartyChoiceInput } from '../parties/partyChoice.inputs.js';
import { ChangeLotLineInput, LotLineInput } from './lotLine.inputs.js';
import { SpreadMethod } from './spreadMethod.js';

@InputType({ description: 'What a lot cost beside its price: carriage, premium, fuel, duty.' })
export class ExtraCostInput {
  @Field(() => String, { description: 'What it was for.' })
  description!: string;

  @Field(() => MoneyInput, { description: 'How much, in whatever currency it was paid.' })
  amount!: MoneyInput;
}

@InputType({ description: 'What the seller said: kept as a claim, not as a fact.' })
export class LotClaimInput {
  @Field(() => String, { description: 'What was said.' })
  statement!: string;

  @Field(() => Int, {
    nullable: true,
    description: 'Place of the line that it is about, from 0; null: about the lot.',
  })
  line?: number | null;
}

@InputType({ description: 'A lot that came in: one thing or several at one price.' })
export class RecordAcquisitionInput {
  @Field(() => GraphQLLocalDate, { description: 'The day it was acquired.' })
  acquiredOn!: string;

  @Field(() => PartyChoiceInput, { nullable: true, description: 'Who it came from.' })
  otherParty?: PartyChoiceInput | null;

  @Field(() => String, { nullable: true, description: 'The fair, auction or house, in words.' })
  venue?: string | null;

  @Field(() => MoneyInput, { description: 'The price of the whole lot; zero for a gift.' })
  price!: MoneyInput;

  @Field(() => [ExtraCostInput], { defaultValue: [], description: 'What it cost beside.' })
  extraCosts!: ExtraCostInput[];

  @Field(() => SpreadMethod, {
    defaultValue: SpreadMethod.EQUAL_SHARES,
    description: 'How price and extra costs are spread over the lines.',
  })
  spreadMethod!: SpreadMethod;

  @Field(() => [LotLineInput], { description: 'What was in the lot, from 1 to 500 lines.' })
  lines!: LotLineInput[];

  @Field(() => [LotClaimInput], { defaultValue: [], description: 'What the seller said.' })
  claims!: LotClaimInput[];

  @Field(() => String, { nullable: true, description: 'Remarks.' })
  note?: string | null;
}

@InputType({ description: 'An extra cost that is changed, or one that was forgotten.' })
export class ChangeExtraCostInput extends ExtraCostInput {
  @Field(() => ID, { nullable: true, description: 'The one that is changed; null: a new one.' })
  id?: string | null;

  @Field(() => Int, {
    nullable: true,
    description: 'The version of it that you saw; null for a new one.',
  })
  version?: number | null;
}

@InputType({ description: 'A change of a lot; what is left out stays as it is.' })
export class ChangeAcquisitionInput {
  @Field(() => ID, { description: 'The lot.' })
  id!: string;

  @Field(() => Int, { description: 'The version of the lot that you saw.' })
  version!: number;

  @Field(() => GraphQLLocalDate, { nullable: true, description: 'The day it was acquired.' })
  acquiredOn?: string;

  @Field(() => PartyChoiceInput, {
    nullable: true,
    description: 'Who it came from; null for not recorded.',
  })
  otherParty?: PartyChoiceInput | null;

  @Field(() => String, { nullable: true, description: 'Fair, auction or house; null for none.' })
  venue?: string | null;

  @Field(() => MoneyInput, { nullable: true, description: 'The price of the whole lot.' })
  price?: MoneyInput;

  @Field(() => SpreadMethod, { nullable: true, description: 'How it is spread over the lines.' })
  spreadMethod?: SpreadMethod;

  @Field(() => [ChangeLotLineInput], {
    defaultValue: [],
    description: 'Lines that change; the others stay.',
  })
  lines!: ChangeLotLineInput[];

  @Field(() => [ChangeExtraCostInput], {
    defaultValue: [],
    description: 'Extra costs that change or are added; the others stay.',
  })
  extraCosts!: ChangeExtraCostInput[];

  @Field(() => String, { nullable: true, description: 'New remarks; null for none.' })
  note?: string | null;
}
