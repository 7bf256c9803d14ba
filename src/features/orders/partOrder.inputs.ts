import { GraphQLLocalDate } from 'graphql-scalars';
import { Field, ID, InputType, Int } from 'type-graphql';

@InputType({ description: 'One line of an order: what, how many, and what for.' })
export class OrderedLineInput {
  @Field(() => ID, { nullable: true, description: 'The part type; or say it in words.' })
  partTypeId?: string | null;

  @Field(() => String, { nullable: true, description: 'What it is, in words: 0.047 uF 630 V.' })
  description?: string | null;

  @Field(() => ID, {
    nullable: true,
    description: 'The rig or accessory it is for; left out with a want: the set of the want.',
  })
  itemId?: string | null;

  @Field(() => [String], {
    defaultValue: [],
    description: 'Places of the set that it is for: C1, C2; up to 200.',
  })
  designators!: string[];

  @Field(() => ID, {
    nullable: true,
    description: 'The want that it answers; what it is may then be left out.',
  })
  wantId?: string | null;

  @Field(() => Int, { defaultValue: 1, description: 'How many, from 1.' })
  quantity!: number;

  @Field(() => Boolean, {
    defaultValue: false,
    description: 'True: order it although one of its places, or its want, is ordered for already.',
  })
  isOrderedAgain!: boolean;
}

@InputType({ description: 'What was ordered in one go: all lines are kept, or none.' })
export class MarkOrderedInput {
  @Field(() => String, { description: 'Where it is ordered from.' })
  orderedFrom!: string;

  @Field(() => GraphQLLocalDate, { description: 'The day it was ordered.' })
  orderedOn!: string;

  @Field(() => GraphQLLocalDate, { nullable: true, description: 'The day it is expected.' })
  expectedOn?: string | null;

  @Field(() => String, { nullable: true, description: "The supplier's number of the order." })
  reference?: string | null;

  @Field(() => String, { nullable: true, description: 'Remarks.' })
  note?: string | null;

  @Field(() => [OrderedLineInput], { description: 'The lines, from 1 to 200.' })
  lines!: OrderedLineInput[];
}

@InputType({ description: 'A change of an order; what is left out stays.' })
export class ChangePartOrderInput {
  @Field(() => ID, { description: 'The order.' })
  id!: string;

  @Field(() => Int, { description: 'The version that you saw.' })
  version!: number;

  @Field(() => Int, { nullable: true, description: 'How many, from 1.' })
  quantity?: number;

  @Field(() => String, { nullable: true, description: 'Where it is ordered from.' })
  orderedFrom?: string;

  @Field(() => GraphQLLocalDate, { nullable: true, description: 'The day it was ordered.' })
  orderedOn?: string;

  @Field(() => GraphQLLocalDate, {
    nullable: true,
    description: 'The day it is expected; null: nobody said.',
  })
  expectedOn?: string | null;

  @Field(() => String, { nullable: true, description: "The supplier's number; null: none." })
  reference?: string | null;

  @Field(() => String, { nullable: true, description: 'Remarks; null: none.' })
  note?: string | null;

  @Field(() => GraphQLLocalDate, {
    nullable: true,
    description: 'The day it came, after which it counts as ordered no more; null: not yet.',
  })
  arrivedOn?: string | null;

  @Field(() => Boolean, {
    nullable: true,
    description: 'True: the order was cancelled; false: it stands.',
  })
  isCancelled?: boolean;
}
