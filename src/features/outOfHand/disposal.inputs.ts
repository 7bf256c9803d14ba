import { GraphQLLocalDate } from 'graphql-scalars';
import { Field, ID, InputType, Int } from 'type-graphql';
import { MoneyInput } from '../../api/kit/money.type.js';
import { ExtraCostInput } from '../acquisitions/acquisition.inputs.js';
import { PartyChoiceInput } from '../parties/partyChoice.inputs.js';
import { DisposalKind } from './lossKind.js';

@InputType({ description: 'One item that goes out in a lot.' })
export class DisposalLineInput {
  @Field(() => ID, { description: 'The rig or accessory.' })
  itemId!: string;

  @Field(() => MoneyInput, {
    nullable: true,
    description: 'What falls to it of the price; all lines say so, or none: then equal shares.',
  })
  price?: MoneyInput | null;
}

@InputType({ description: 'A lot goes out for good: one item or several at one price.' })
export class RecordDisposalInput {
  @Field(() => DisposalKind, { defaultValue: DisposalKind.SOLD, description: 'How it went.' })
  kind!: DisposalKind;

  @Field(() => GraphQLLocalDate, { description: 'The day it went.' })
  disposedOn!: string;

  @Field(() => PartyChoiceInput, { nullable: true, description: 'To whom.' })
  toParty?: PartyChoiceInput | null;

  @Field(() => String, { nullable: true, description: 'The fair, auction or house, in words.' })
  venue?: string | null;

  @Field(() => MoneyInput, { description: 'The price of the lot; 0 for a gift or scrap.' })
  price!: MoneyInput;

  @Field(() => [ExtraCostInput], {
    defaultValue: [],
    description: 'What it cost to part with it: commission, carriage.',
  })
  costs!: ExtraCostInput[];

  @Field(() => [DisposalLineInput], { description: 'What went, from 1 to 500 items.' })
  lines!: DisposalLineInput[];

  @Field(() => String, { nullable: true, description: 'Remarks.' })
  note?: string | null;
}

@InputType({ description: 'A correction of a disposal; what is left out stays as it is.' })
export class ChangeDisposalInput {
  @Field(() => ID, { description: 'The disposal.' })
  id!: string;

  @Field(() => Int, { description: 'The version that you saw.' })
  version!: number;

  @Field(() => DisposalKind, { nullable: true, description: 'How it went.' })
  kind?: DisposalKind;

  @Field(() => GraphQLLocalDate, { nullable: true, description: 'The day it went.' })
  disposedOn?: string;

  @Field(() => PartyChoiceInput, { nullable: true, description: 'To whom; null for unknown.' })
  toParty?: PartyChoiceInput | null;

  @Field(() => MoneyInput, {
    nullable: true,
    description: 'The price of the lot; spread as before unless `lines` says otherwise.',
  })
  price?: MoneyInput | null;

  @Field(() => [DisposalLineInput], {
    nullable: true,
    description:
      'All the items of the lot with what falls to each; without prices equal shares. An item that did not go after all is brought back with `returnItem`.',
  })
  lines?: DisposalLineInput[] | null;

  @Field(() => String, { nullable: true, description: 'Where; null for unknown.' })
  venue?: string | null;

  @Field(() => String, { nullable: true, description: 'New remarks; null for none.' })
  note?: string | null;
}
