import { GraphQLLocalDate } from 'graphql-scalars';
import { Field, ID, InputType, Int } from 'type-graphql';
import { MoneyInput } from '../../api/kit/money.type.js';
import { PriceKind } from './priceKind.js';

@InputType({ description: 'A price seen or paid somewhere: of a part type, or of a model.' })
export class NotePriceInput {
  @Field(() => ID, { nullable: true, description: 'The part type; or give `modelId`.' })
  partTypeId?: string | null;

  @Field(() => ID, { nullable: true, description: 'The model, for a whole set.' })
  modelId?: string | null;

  @Field(() => PriceKind, { description: 'What sort of price it is.' })
  kind!: PriceKind;

  @Field(() => GraphQLLocalDate, { description: 'The day.' })
  notedOn!: string;

  @Field(() => MoneyInput, { description: 'How much, for all of `quantity`.' })
  amount!: MoneyInput;

  @Field(() => Int, { defaultValue: 1, description: 'How many it was for.' })
  quantity!: number;

  @Field(() => String, { description: 'Where: a fair, a list, a sale.' })
  seenAt!: string;

  @Field(() => String, { nullable: true, description: 'Remarks.' })
  note?: string | null;
}

@InputType({ description: 'A correction of a price note; what is left out stays as it is.' })
export class ChangePriceNoteInput {
  @Field(() => ID, { description: 'The price note.' })
  id!: string;

  @Field(() => Int, { description: 'The version that you saw.' })
  version!: number;

  @Field(() => PriceKind, { nullable: true, description: 'What sort of price it is.' })
  kind?: PriceKind;

  @Field(() => GraphQLLocalDate, { nullable: true, description: 'The day.' })
  notedOn?: string;

  @Field(() => MoneyInput, { nullable: true, description: 'How much, for all of `quantity`.' })
  amount?: MoneyInput;

  @Field(() => Int, { nullable: true, description: 'How many it was for.' })
  quantity?: number;

  @Field(() => String, { nullable: true, description: 'Where.' })
  seenAt?: string;

  @Field(() => String, { nullable: true, description: 'New remarks; null for none.' })
  note?: string | null;

  @Field(() => Boolean, { nullable: true, description: 'Strike it out, or count it again.' })
  isStruck?: boolean;
}
