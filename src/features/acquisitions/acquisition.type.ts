import { GraphQLDateTimeISO, GraphQLLocalDate } from 'graphql-scalars';
import { Field, Int, ObjectType } from 'type-graphql';
import { connectionOf } from '../../api/kit/connectionOf.js';
import { Node } from '../../api/kit/node.type.js';
import { SpreadMethod } from './spreadMethod.js';

@ObjectType({
  implements: Node,
  description:
    'A lot that came in: one thing or several at one price. What falls to each is computed.',
  simpleResolvers: true,
})
export class Acquisition extends Node {
  @Field(() => Int, { description: 'Counts changes; send it back with your change.' })
  version!: number;

  @Field(() => GraphQLLocalDate, { description: 'The day it was acquired.' })
  acquiredOn!: string;

  @Field(() => String, {
    nullable: true,
    description: 'The fair, auction or house, in words; null if not recorded.',
  })
  venue!: string | null;

  @Field(() => SpreadMethod, { description: 'How price and extra costs are spread.' })
  spreadMethod!: SpreadMethod;

  @Field(() => String, { nullable: true, description: 'Remarks; null if none.' })
  note!: string | null;

  @Field(() => GraphQLDateTimeISO, { description: 'When it was first written down.' })
  recordedAt!: string;

  @Field(() => GraphQLDateTimeISO, { description: 'When its own data last changed.' })
  changedAt!: string;
}

export const AcquisitionConnection = connectionOf(
  'Acquisition',
  () => Acquisition,
  'lots that came in',
);
