import { Field, ID, InputType, Int } from 'type-graphql';

@InputType({ description: 'A part that a task needs.' })
export class PartNeededInput {
  @Field(() => ID, { description: 'The part type.' })
  partTypeId!: string;

  @Field(() => Int, { defaultValue: 1, description: 'How many, 1 to 1000.' })
  quantity!: number;
}

@InputType({ description: 'All the parts that a task needs, from now on.' })
export class SetPartsNeededInput {
  @Field(() => ID, { description: 'The task.' })
  id!: string;

  @Field(() => Int, { description: 'The version that you saw.' })
  version!: number;

  @Field(() => [PartNeededInput], { description: 'The parts; none if it needs none.' })
  parts!: PartNeededInput[];
}
