import { Field, Int, ObjectType } from 'type-graphql';
import { Node } from '../../api/kit/node.type.js';
import { ComponentOrigin } from './componentOrigin.js';

@ObjectType({
  implements: Node,
  description: 'A physical part that sits, or has sat, in a position of an item.',
  simpleResolvers: true,
})
export class Component extends Node {
  @Field(() => Int, { description: 'Counts changes; send it back with your change.' })
  version!: number;

  @Field(() => String, {
    nullable: true,
    description: 'What is printed on it, or what it is; null if not recorded.',
  })
  marking!: string | null;

  @Field(() => String, {
    nullable: true,
    description: 'Date code as printed; null if not recorded.',
  })
  dateCode!: string | null;

  @Field(() => ComponentOrigin, { description: 'Whether it came with the set.' })
  origin!: ComponentOrigin;

  @Field(() => String, { nullable: true, description: 'Remarks; null if none.' })
  note!: string | null;
}
