import { GraphQLDateTimeISO } from 'graphql-scalars';
import { Field, ID, InputType, Int } from 'type-graphql';

@InputType({ description: 'An item goes to another place, with everything that it houses.' })
export class MoveItemInput {
  @Field(() => ID, { description: 'The rig or accessory.' })
  itemId!: string;

  @Field(() => ID, { nullable: true, description: 'Where it goes; null for unknown.' })
  placeId?: string | null;

  @Field(() => GraphQLDateTimeISO, { nullable: true, description: 'When; left out: now.' })
  movedAt?: Date | null;

  @Field(() => String, { nullable: true, description: 'Remarks.' })
  note?: string | null;
}

@InputType({ description: 'A correction of the remarks on a move.' })
export class ChangeMoveInput {
  @Field(() => ID, { description: 'The move.' })
  id!: string;

  @Field(() => Int, { description: 'The version that you saw.' })
  version!: number;

  @Field(() => String, { nullable: true, description: 'New remarks; null for none.' })
  note!: string | null;
}
