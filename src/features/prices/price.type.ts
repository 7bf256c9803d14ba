import { GraphQLDateTimeISO, GraphQLLocalDate } from 'graphql-scalars';
import { Field, Int, ObjectType } from 'type-graphql';
import { Basis } from '../../api/kit/basis.type.js';
import { connectionOf } from '../../api/kit/connectionOf.js';
import { MoneyAmount } from '../../api/kit/money.type.js';
import { Node } from '../../api/kit/node.type.js';
import { PriceKind } from './priceKind.js';

@ObjectType({
  implements: Node,
  description: 'A price seen or paid somewhere on a day.',
  simpleResolvers: true,
})
export class PriceNote extends Node {
  @Field(() => Int, { description: 'Counts changes; send it back with your change.' })
  version!: number;

  @Field(() => PriceKind, { description: 'What sort of price it is.' })
  kind!: PriceKind;

  @Field(() => GraphQLLocalDate, { description: 'The day.' })
  notedOn!: string;

  @Field(() => Int, { description: 'How many the amount is for, together.' })
  quantity!: number;

  @Field(() => String, { description: 'Where: a fair, a list, a sale.' })
  seenAt!: string;

  @Field(() => String, { nullable: true, description: 'Remarks; null if none.' })
  note!: string | null;

  @Field(() => GraphQLDateTimeISO, {
    nullable: true,
    description: 'Since when it is struck out and no longer counts; null while it counts.',
  })
  struckAt!: string | null;
}

export const PriceNoteConnection = connectionOf('PriceNote', () => PriceNote, 'price notes');

@ObjectType({
  description:
    'What one costs in one currency by the prices noted. Few notes, or old ones, say that it is scarce.',
  simpleResolvers: true,
})
export class PriceEstimate {
  @Field(() => MoneyAmount, {
    nullable: true,
    description: 'Median of the recent prices of one; null when none is recent.',
  })
  median!: MoneyAmount | null;

  @Field(() => MoneyAmount, { nullable: true, description: 'The lowest recent one; null if none.' })
  lowest!: MoneyAmount | null;

  @Field(() => MoneyAmount, {
    nullable: true,
    description: 'The highest recent one; null if none.',
  })
  highest!: MoneyAmount | null;

  @Field(() => Int, { description: 'How many notes are recent.' })
  recentCount!: number;

  @Field(() => Int, { description: 'How many there are of any age.' })
  totalCount!: number;

  @Field(() => GraphQLLocalDate, { description: 'The day of the newest note.' })
  newestOn!: string;

  @Field(() => Int, { description: 'How many days ago that was.' })
  newestAgeDays!: number;

  @Field(() => Basis, { description: 'What was counted, and how.' })
  basis!: Basis;
}
