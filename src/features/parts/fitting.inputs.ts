import { GraphQLDateTimeISO } from 'graphql-scalars';
import { ArgsType, Field, ID, InputType, Int } from 'type-graphql';
import { PageArgs } from '../../api/kit/pageArgs.js';
import { NewComponentInput } from './component.inputs.js';
import { Disposition } from './disposition.js';

@ArgsType()
export class ComponentsArgs extends PageArgs {
  @Field(() => GraphQLDateTimeISO, {
    nullable: true,
    description: 'What sat where at this instant; now if left out.',
  })
  asOf?: Date | null;
}

@InputType({ description: 'What becomes of the part that makes room.' })
export class RemovingInput {
  @Field(() => Disposition, { description: 'Where it goes.' })
  disposition!: Disposition;

  @Field(() => String, { nullable: true, description: 'Why it came out, and what it was like.' })
  note?: string | null;
}

@InputType({ description: 'A spare from the shelf: of a part type, or from one lot.' })
export class FromStockInput {
  @Field(() => ID, { nullable: true, description: 'Of this part type, the oldest lots first.' })
  partTypeId?: string | null;

  @Field(() => ID, { nullable: true, description: 'Or from this lot.' })
  lotId?: string | null;

  @Field(() => ID, {
    nullable: true,
    description: 'The task that it is fitted for: what that has put aside is taken first.',
  })
  taskId?: string | null;

  @Field(() => String, { nullable: true, description: 'What is printed on it.' })
  marking?: string | null;

  @Field(() => String, { nullable: true, description: 'Date code as printed.' })
  dateCode?: string | null;
}

@InputType({ description: 'A component goes into a place of an item.' })
export class FitComponentInput {
  @Field(() => ID, { description: 'The rig or accessory.' })
  itemId!: string;

  @Field(() => String, { description: 'The place in it: V3, C12, bottom cover.' })
  designator!: string;

  @Field(() => ID, { nullable: true, description: 'A component that is known already.' })
  componentId?: string | null;

  @Field(() => NewComponentInput, { nullable: true, description: 'Or a new one.' })
  component?: NewComponentInput | null;

  @Field(() => FromStockInput, {
    nullable: true,
    description: 'Or a spare, which leaves the shelf with it.',
  })
  fromStock?: FromStockInput | null;

  @Field(() => GraphQLDateTimeISO, { nullable: true, description: 'When; now if left out.' })
  fittedAt?: Date | null;

  @Field(() => RemovingInput, {
    nullable: true,
    description: 'The part that sits there now comes out at the same instant.',
  })
  removing?: RemovingInput | null;

  @Field(() => GraphQLDateTimeISO, {
    nullable: true,
    description: 'For what sat there in the past: when it came out again.',
  })
  removedAt?: Date | null;

  @Field(() => Disposition, { nullable: true, description: 'With `removedAt`: where it went.' })
  disposition?: Disposition | null;

  @Field(() => String, { nullable: true, description: 'Remarks.' })
  note?: string | null;
}

@InputType({ description: 'A component comes out of where it sits.' })
export class RemoveComponentInput {
  @Field(() => ID, { description: 'The component.' })
  componentId!: string;

  @Field(() => GraphQLDateTimeISO, { nullable: true, description: 'When; now if left out.' })
  removedAt?: Date | null;

  @Field(() => Disposition, { description: 'Where it goes.' })
  disposition!: Disposition;

  @Field(() => String, { nullable: true, description: 'Why it came out, and what it was like.' })
  note?: string | null;
}

@InputType({ description: 'A correction of a fitting; what is left out stays as it is.' })
export class ChangeFittingInput {
  @Field(() => ID, { description: 'The fitting.' })
  id!: string;

  @Field(() => Int, { description: 'The version that you saw.' })
  version!: number;

  @Field(() => String, { nullable: true, description: 'The place in the item.' })
  designator?: string;

  @Field(() => GraphQLDateTimeISO, { nullable: true, description: 'When it was fitted.' })
  fittedAt?: Date;

  @Field(() => GraphQLDateTimeISO, {
    nullable: true,
    description: 'When it was removed; null: it sits there still.',
  })
  removedAt?: Date | null;

  @Field(() => Disposition, { nullable: true, description: 'Where it went.' })
  disposition?: Disposition;

  @Field(() => String, { nullable: true, description: 'New remarks; null for none.' })
  note?: string | null;
}
