import { GraphQLLocalDate } from 'graphql-scalars';
import { Field, ID, InputType, Int } from 'type-graphql';
import { PartyChoiceInput } from '../parties/partyChoice.inputs.js';

@InputType({ description: 'What is agreed on a loan.' })
export abstract class LoanTerms {
  @Field(() => ID, { description: 'The rig or accessory.' })
  itemId!: string;

  @Field(() => GraphQLLocalDate, { description: 'The day it went.' })
  lentOn!: string;

  @Field(() => GraphQLLocalDate, {
    nullable: true,
    description: 'The day by which it is to be back; null until further notice.',
  })
  dueOn?: string | null;

  @Field(() => String, { nullable: true, description: 'Where it is, in words.' })
  placeName?: string | null;

  @Field(() => String, { nullable: true, description: 'What for: a show, a contest.' })
  purpose?: string | null;

  @Field(() => String, { nullable: true, description: 'Remarks: condition, terms, insurance.' })
  note?: string | null;
}

@InputType({ description: 'An item goes to somebody for a time.' })
export class LendItemInput extends LoanTerms {
  @Field(() => PartyChoiceInput, { description: 'Who borrows it.' })
  borrower!: PartyChoiceInput;
}

@InputType({ description: 'Somebody lends us an item for a time.' })
export class BorrowItemInput extends LoanTerms {
  @Field(() => PartyChoiceInput, { description: 'Whose it is.' })
  lender!: PartyChoiceInput;
}

@InputType({ description: 'A change of a loan, or its end; what is left out stays as it is.' })
export class ChangeLoanInput {
  @Field(() => ID, { description: 'The loan.' })
  id!: string;

  @Field(() => Int, { description: 'The version that you saw.' })
  version!: number;

  @Field(() => GraphQLLocalDate, { nullable: true, description: 'The day it went.' })
  lentOn?: string;

  @Field(() => GraphQLLocalDate, { nullable: true, description: 'Due back; null for open.' })
  dueOn?: string | null;

  @Field(() => GraphQLLocalDate, {
    nullable: true,
    description: 'The day it came back; null: it has not.',
  })
  returnedOn?: string | null;

  @Field(() => String, { nullable: true, description: 'Where it is; null for unknown.' })
  placeName?: string | null;

  @Field(() => String, { nullable: true, description: 'What for; null for unknown.' })
  purpose?: string | null;

  @Field(() => String, { nullable: true, description: 'New remarks; null for none.' })
  note?: string | null;
}
