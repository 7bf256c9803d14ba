import { Field, Int, ObjectType } from 'type-graphql';
import { Node } from '../../api/kit/node.type.js';
import { DecimalScalar } from '../../api/kit/scalars.js';
import { ReadingTier } from './readingTier.js';

@ObjectType({
  implements: Node,
  description: 'What readings of one quantity are held against, both ends included.',
  simpleResolvers: true,
})
export class Limit extends Node {
  @Field(() => Int, { description: 'Counts changes; send it back with your change.' })
  version!: number;

  @Field(() => String, { description: 'Name of the quantity: transconductance, leakage current.' })
  quantity!: string;

  @Field(() => ReadingTier, {
    nullable: true,
    description: 'Where it holds; null: on the tester and in the circuit.',
  })
  tier!: ReadingTier | null;

  @Field(() => DecimalScalar, {
    nullable: true,
    description: 'The least it may be, in `unit`; null for no lower end.',
  })
  lower!: string | null;

  @Field(() => DecimalScalar, {
    nullable: true,
    description: 'The most it may be, in `unit`; null for no upper end.',
  })
  upper!: string | null;

  @Field(() => String, { description: 'UCUM code of the unit: V, mA, uF.' })
  unit!: string;

  @Field(() => String, {
    nullable: true,
    description: 'Where it was published, or "common practice, no source"; null if not recorded.',
  })
  source!: string | null;
}
