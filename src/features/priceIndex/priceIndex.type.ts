import { GraphQLCurrency, GraphQLDateTimeISO } from 'graphql-scalars';
import { Field, Int, ObjectType } from 'type-graphql';
import { Basis } from '../../api/kit/basis.type.js';
import { connectionOf } from '../../api/kit/connectionOf.js';
import { MoneyAmount } from '../../api/kit/money.type.js';
import { Node } from '../../api/kit/node.type.js';

@ObjectType({
  implements: Node,
  description: 'A price index that the owner loaded.',
  simpleResolvers: true,
})
export class PriceIndex extends Node {
  @Field(() => Int, { description: 'Counts changes; send it back with your change.' })
  version!: number;

  @Field(() => String, { description: 'What it measures.' })
  name!: string;

  @Field(() => GraphQLCurrency, { description: 'The currency whose amounts it carries on.' })
  currency!: string;

  @Field(() => String, { description: 'Who publishes it.' })
  source!: string;

  @Field(() => GraphQLDateTimeISO, {
    nullable: true,
    description: 'Since when it is struck out and no longer used; null while it is used.',
  })
  struckAt!: string | null;
}

export const PriceIndexConnection = connectionOf('PriceIndex', () => PriceIndex, 'price indexes');

@ObjectType({
  description: 'An amount of one day in the money of another. It is no market value.',
  simpleResolvers: true,
})
export class IndexedMoney {
  @Field(() => MoneyAmount, { description: 'The amount in the money of the later day.' })
  amount!: MoneyAmount;

  @Field(() => String, { description: 'The index that was used.' })
  index!: string;

  @Field(() => Basis, { description: 'The points that were used.' })
  basis!: Basis;
}
