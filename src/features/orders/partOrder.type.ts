import { GraphQLDateTimeISO, GraphQLLocalDate } from 'graphql-scalars';
import { Field, Int, ObjectType } from 'type-graphql';
import { connectionOf } from '../../api/kit/connectionOf.js';
import { Node } from '../../api/kit/node.type.js';

@ObjectType({
  implements: Node,
  description: 'A part that is ordered: so many of it, from where, since when, and by when.',
  simpleResolvers: true,
})
export class PartOrder extends Node {
  @Field(() => Int, { description: 'Counts changes; send it back with your change.' })
  version!: number;

  @Field(() => String, { nullable: true, description: 'What it is, in words; null if not said.' })
  description!: string | null;

  @Field(() => Int, { description: 'How many.' })
  quantity!: number;

  @Field(() => String, { description: 'Where it is ordered from.' })
  orderedFrom!: string;

  @Field(() => GraphQLLocalDate, { description: 'The day it was ordered.' })
  orderedOn!: string;

  @Field(() => GraphQLLocalDate, {
    nullable: true,
    description: 'The day it is expected; null if nobody said.',
  })
  expectedOn!: string | null;

  @Field(() => String, { nullable: true, description: "The supplier's number of the order." })
  reference!: string | null;

  @Field(() => String, { nullable: true, description: 'Remarks.' })
  note!: string | null;

  @Field(() => GraphQLLocalDate, {
    nullable: true,
    description: 'The day it came; null while it is on its way.',
  })
  arrivedOn!: string | null;

  @Field(() => GraphQLDateTimeISO, {
    nullable: true,
    description: 'When the order was cancelled; null if it was not.',
  })
  cancelledAt!: string | null;
}

export const PartOrderConnection = connectionOf('PartOrder', () => PartOrder, 'orders of parts');
