import { GraphQLLocalDate } from 'graphql-scalars';
import { Field, ID, InputType, Int } from 'type-graphql';
import { LossKind } from './lossKind.js';

@InputType({ description: 'An item was stolen or cannot be found.' })
export class ReportLossInput {
  @Field(() => ID, { description: 'The rig or accessory.' })
  itemId!: string;

  @Field(() => LossKind, { defaultValue: LossKind.STOLEN, description: 'How it went missing.' })
  kind!: LossKind;

  @Field(() => GraphQLLocalDate, { description: 'The day it was missed.' })
  missedOn!: string;

  @Field(() => String, { nullable: true, description: 'What is known of how it happened.' })
  circumstances?: string | null;

  @Field(() => String, { nullable: true, description: 'To whom it was reported.' })
  reportedTo?: string | null;

  @Field(() => String, { nullable: true, description: 'The number that the report was given.' })
  reportNumber?: string | null;

  @Field(() => String, { nullable: true, description: 'Remarks.' })
  note?: string | null;
}

@InputType({ description: 'A change of a loss, or its end; what is left out stays as it is.' })
export class ChangeLossInput {
  @Field(() => ID, { description: 'The loss.' })
  id!: string;

  @Field(() => Int, { description: 'The version that you saw.' })
  version!: number;

  @Field(() => LossKind, { nullable: true, description: 'How it went missing.' })
  kind?: LossKind;

  @Field(() => GraphQLLocalDate, { nullable: true, description: 'The day it was missed.' })
  missedOn?: string;

  @Field(() => GraphQLLocalDate, {
    nullable: true,
    description: 'The day it was found; null: it was not.',
  })
  foundOn?: string | null;

  @Field(() => String, { nullable: true, description: 'How it happened; null for unknown.' })
  circumstances?: string | null;

  @Field(() => String, { nullable: true, description: 'To whom it was reported; null for none.' })
  reportedTo?: string | null;

  @Field(() => String, { nullable: true, description: 'Number of the report; null for none.' })
  reportNumber?: string | null;

  @Field(() => String, { nullable: true, description: 'New remarks; null for none.' })
  note?: string | null;
}
