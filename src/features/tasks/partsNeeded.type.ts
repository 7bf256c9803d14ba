import { Field, Int, ObjectType } from 'type-graphql';

@ObjectType({ description: 'A part that a task cannot be done without.', simpleResolvers: true })
export class PartNeeded {
  @Field(() => Int, { description: 'How many it takes.' })
  quantity!: number;

  @Field(() => Int, {
    description:
      'How many lie ready: components of this type that sit in no item and were last put on the shelf.',
  })
  onShelf!: number;
}
