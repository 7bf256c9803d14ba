import { GraphQLDateTimeISO, GraphQLLocalDate } from 'graphql-scalars';
import { Field, Int, ObjectType } from 'type-graphql';
import { connectionOf } from '../../api/kit/connectionOf.js';
import { Node } from '../../api/kit/node.type.js';

@ObjectType({
  implements: Node,
  description: 'What somebody said of an item or a lot: a claim, not a fact.',
  simpleResolvers: true,
})
export class Claim extends Node {
  @Field(() => Int, { description: 'Counts changes; send it back with your change.' })
  version!: number;

  @Field(() => String, { description: 'What was said.' })
  statement!: string;

  @Field(() => GraphQLLocalDate, {
    nullable: true,
    description: 'The day it was said; null if not recorded.',
  })
  saidOn!: string | null;

  @Field(() => GraphQLDateTimeISO, { description: 'When it was first written down.' })
  recordedAt!: string;
}

export const ClaimConnection = connectionOf('Claim', () => Claim, 'claims');
