import { Field, ID, InputType, Int } from 'type-graphql';
import { MoneyInput } from '../../api/kit/money.type.js';

@InputType({ description: 'What is looked for: a part type, or something in words, or both.' })
export class AddWantInput {
  @Field(() => ID, { nullable: true, description: 'The part type.' })
  partTypeId?: string | null;

  @Field(() => String, { nullable: true, description: 'What it is, in words.' })
  description?: string | null;

  @Field(() => Int, { defaultValue: 1, description: 'How many, from 1.' })
  quantity!: number;

  @Field(() => ID, {
    nullable: true,
    description: 'The rig or accessory that it is for; left out with a task: the set of the task.',
  })
  itemId?: string | null;

  @Field(() => String, { nullable: true, description: 'The place in it: V3, bottom cover.' })
  designator?: string | null;

  @Field(() => ID, { nullable: true, description: 'The task that waits for it.' })
  taskId?: string | null;

  @Field(() => MoneyInput, { nullable: true, description: 'The most to be paid for one.' })
  ceiling?: MoneyInput | null;

  @Field(() => [ID], {
    defaultValue: [],
    description: 'Part types that will do instead, up to 20.',
  })
  substituteIds!: string[];

  @Field(() => String, { nullable: true, description: 'Remarks.' })
  note?: string | null;
}

@InputType({ description: 'A change of a want; what is left out stays as it is.' })
export class ChangeWantInput {
  @Field(() => ID, { description: 'The want.' })
  id!: string;

  @Field(() => Int, { description: 'The version that you saw.' })
  version!: number;

  @Field(() => Int, { nullable: true, description: 'How many, from 1.' })
  quantity?: number;

  @Field(() => MoneyInput, {
    nullable: true,
    description: 'The most to be paid; null: no ceiling.',
  })
  ceiling?: MoneyInput | null;

  @Field(() => [ID], { nullable: true, description: 'All part types that will do instead, anew.' })
  substituteIds?: string[];

  @Field(() => Boolean, { nullable: true, description: 'No longer wanted; false: wanted again.' })
  isDropped?: boolean;

  @Field(() => String, { nullable: true, description: 'New remarks; null for none.' })
  note?: string | null;
}
