import { GraphQLLocalDate } from 'graphql-scalars';
import { Field, ID, InputType, Int } from 'type-graphql';
import { PartyChoiceInput } from '../parties/partyChoice.inputs.js';

@InputType({
  description: 'What somebody said of an item or of a lot: `itemId` or `acquisitionId`.',
})
export class RecordClaimInput {
  @Field(() => ID, { nullable: true, description: 'The rig or accessory that it is about.' })
  itemId?: string | null;

  @Field(() => ID, { nullable: true, description: 'The lot that it is about.' })
  acquisitionId?: string | null;

  @Field(() => String, { description: 'What was said.' })
  statement!: string;

  @Field(() => PartyChoiceInput, { nullable: true, description: 'Who said it.' })
  saidBy?: PartyChoiceInput | null;

  @Field(() => GraphQLLocalDate, { nullable: true, description: 'The day it was said.' })
  saidOn?: string | null;
}

@InputType({ description: 'A change of a claim; what is left out stays as it is.' })
export class ChangeClaimInput {
  @Field(() => ID, { description: 'The claim.' })
  id!: string;

  @Field(() => Int, { description: 'The version that you saw.' })
  version!: number;

  @Field(() => String, { nullable: true, description: 'What was said.' })
  statement?: string;

  @Field(() => PartyChoiceInput, { nullable: true, description: 'Who said it; null for unknown.' })
  saidBy?: PartyChoiceInput | null;

  @Field(() => GraphQLLocalDate, {
    nullable: true,
    description: 'The day it was said; null for unknown.',
  })
  saidOn?: string | null;
}
