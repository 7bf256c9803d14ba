import { GraphQLDateTimeISO } from 'graphql-scalars';
import { Field, Int, ObjectType } from 'type-graphql';
import { connectionOf } from '../../api/kit/connectionOf.js';
import { Node } from '../../api/kit/node.type.js';
import { Disposition } from './disposition.js';

@ObjectType({
  implements: Node,
  description: 'A component sat in a position of an item from one instant until another.',
  simpleResolvers: true,
})
export class Fitting extends Node {
  @Field(() => Int, { description: 'Counts changes; send it back with your change.' })
  version!: number;

  @Field(() => String, { description: 'The place in the item: V3, C12, bottom cover.' })
  designator!: string;

  @Field(() => GraphQLDateTimeISO, { description: 'When it was fitted.' })
  fittedAt!: string;

  @Field(() => GraphQLDateTimeISO, {
    nullable: true,
    description: 'When it was removed; null while it sits there.',
  })
  removedAt!: string | null;

  @Field(() => Disposition, {
    nullable: true,
    description: 'Where it went when it was removed; null while it sits there.',
  })
  disposition!: Disposition | null;

  @Field(() => String, { nullable: true, description: 'Remarks; null if none.' })
  note!: string | null;
}

export const FittingConnection = connectionOf('Fitting', () => Fitting, 'fittings');
