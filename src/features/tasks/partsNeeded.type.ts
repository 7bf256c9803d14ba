import { Field, Int, ObjectType } from 'type-graphql';

@ObjectType({ description: 'A part that a task cannot be done without.', simpleResolvers: true })
export class PartNeeded {
  @Field(() => Int, { description: 'How many it takes.' })
  quantity!: number;

  @Field(() => Int, {
    description:
      'How many lie ready for it: put aside for this task, or on the shelf for anybody. What is put aside for another task or is for repair does not count.',
  })
  onShelf!: number;

  @Field(() => Int, {
    description: 'How many of those are put aside for this task (`reserveStock`).',
  })
  putAside!: number;
}
