import { Field, Int, ObjectType } from 'type-graphql';
import { Basis } from '../../api/kit/basis.type.js';
import { connectionOf } from '../../api/kit/connectionOf.js';
import { MoneyAmount } from '../../api/kit/money.type.js';
import { Node } from '../../api/kit/node.type.js';
import { DecimalScalar } from '../../api/kit/scalars.js';

@ObjectType({
  implements: Node,
  description: 'One thing in a lot, an item or sundries, with what falls to it.',
  simpleResolvers: true,
})
export class LotLine extends Node {
  @Field(() => Int, { description: 'Counts changes; send it back with your change.' })
  version!: number;

  @Field(() => Int, { description: 'Its place in the lot, from 0.' })
  ordinal!: number;

  @Field(() => String, {
    nullable: true,
    description: 'Other things, in words; null where the line is an item.',
  })
  sundries!: string | null;

  @Field(() => DecimalScalar, {
    nullable: true,
    description: 'Its share as stated, in any measure; null if none was stated.',
  })
  statedShare!: string | null;

  @Field(() => MoneyAmount, {
    nullable: true,
    description: 'Its value as stated, in the currency of the lot; null if none was stated.',
  })
  statedValue!: MoneyAmount | null;

  @Field(() => MoneyAmount, { description: 'What of the price falls to it.' })
  price!: MoneyAmount;

  @Field(() => [MoneyAmount], {
    description: 'What of the extra costs falls to it, by currency; empty when there were none.',
  })
  extras!: MoneyAmount[];

  @Field(() => [MoneyAmount], {
    description: 'Price and extra costs together, one amount a currency; nothing is converted.',
  })
  totals!: MoneyAmount[];

  @Field(() => Basis, { description: 'How these figures came about.' })
  basis!: Basis;
}

export const LotLineConnection = connectionOf('LotLine', () => LotLine, 'lines of a lot');
