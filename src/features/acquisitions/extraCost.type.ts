import { Field, Int, ObjectType } from 'type-graphql';
import { Node } from '../../api/kit/node.type.js';

@ObjectType({
  implements: Node,
  description: 'What a lot cost beside its price: carriage, premium, fuel, duty.',
  simpleResolvers: true,
})
export class ExtraCost extends Node {
  @Field(() => Int, { description: 'Counts changes; send it back with your change.' })
  version!: number;

  @Field(() => String, { description: 'What it was for.' })
  description!: string;
}
