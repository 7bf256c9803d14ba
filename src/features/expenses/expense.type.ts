import { GraphQLDateTimeISO, GraphQLLocalDate } from 'graphql-scalars';
import { Field, Int, ObjectType } from 'type-graphql';
import { connectionOf } from '../../api/kit/connectionOf.js';
import { Node } from '../../api/kit/node.type.js';

@ObjectType({
  implements: Node,
  description: 'Money spent on an item, or come back: then the amount is below zero.',
  simpleResolvers: true,
})
export class Expense extends Node {
  @Field(() => Int, { description: 'Counts changes; send it back with your change.' })
  version!: number;

  @Field(() => GraphQLLocalDate, { description: 'The day on which it was spent.' })
  spentOn!: string;

  @Field(() => String, { description: 'What for.' })
  description!: string;

  @Field(() => String, { nullable: true, description: 'Remarks; null if none.' })
  note!: string | null;

  @Field(() => GraphQLDateTimeISO, { description: 'When it was first written down.' })
  recordedAt!: string;

  @Field(() => GraphQLDateTimeISO, { description: 'When it last changed.' })
  changedAt!: string;
}

export const ExpenseConnection = connectionOf('Expense', () => Expense, 'expenses');
