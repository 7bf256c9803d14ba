import { GraphQLLocalDate } from 'graphql-scalars';
import { Field, ID, InputType, Int } from 'type-graphql';
import { MoneyInput } from '../../api/kit/money.type.js';
import { PartyChoiceInput } from '../parties/partyChoice.inputs.js';

@InputType({ description: 'Money spent on an item, or come back: then the amount is below zero.' })
export class RecordExpenseInput {
  @Field(() => ID, { description: 'The rig or accessory.' })
  itemId!: string;

  @Field(() => ID, { nullable: true, description: 'One of its projects; null for none.' })
  projectId?: string | null;

  @Field(() => GraphQLLocalDate, { description: 'The day on which it was spent.' })
  spentOn!: string;

  @Field(() => MoneyInput, {
    description: 'How much; below zero for money that came back, such as a refund. Not zero.',
  })
  amount!: MoneyInput;

  @Field(() => String, { description: 'What for.' })
  description!: string;

  @Field(() => PartyChoiceInput, { nullable: true, description: 'Who was paid, or paid it back.' })
  paidTo?: PartyChoiceInput | null;

  @Field(() => String, { nullable: true, description: 'Remarks.' })
  note?: string | null;
}

@InputType({ description: 'A change of an expense; what is left out stays as it is.' })
export class ChangeExpenseInput {
  @Field(() => ID, { description: 'The expense.' })
  id!: string;

  @Field(() => Int, { description: 'The version that you saw.' })
  version!: number;

  @Field(() => ID, { nullable: true, description: 'The item that it really was for.' })
  itemId?: string;

  @Field(() => ID, { nullable: true, description: 'One of its projects; null for none.' })
  projectId?: string | null;

  @Field(() => GraphQLLocalDate, { nullable: true, description: 'The day it was spent.' })
  spentOn?: string;

  @Field(() => MoneyInput, {
    nullable: true,
    description: 'How much; zero, with a note that says why, for what was never spent.',
  })
  amount?: MoneyInput;

  @Field(() => String, { nullable: true, description: 'What for.' })
  description?: string;

  @Field(() => PartyChoiceInput, { nullable: true, description: 'Who was paid; null for unknown.' })
  paidTo?: PartyChoiceInput | null;

  @Field(() => String, { nullable: true, description: 'New remarks; null for none.' })
  note?: string | null;
}
