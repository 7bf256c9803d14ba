import { GraphQLLocalDate } from 'graphql-scalars';
import { Field, Int, ObjectType } from 'type-graphql';
import { connectionOf } from '../../api/kit/connectionOf.js';
import { Node } from '../../api/kit/node.type.js';
import { DecimalScalar } from '../../api/kit/scalars.js';

@ObjectType({
  implements: Node,
  description:
    'Two instruments compared on the same parts, so that a series of readings goes on over a change of instrument.',
  simpleResolvers: true,
})
export class InstrumentComparison extends Node {
  @Field(() => Int, { description: 'Counts changes; send it back with your change.' })
  version!: number;

  @Field(() => String, { description: 'The quantity.' })
  quantity!: string;

  @Field(() => String, { description: 'The instrument that is converted.' })
  fromInstrument!: string;

  @Field(() => String, { description: 'The instrument that it is converted to.' })
  toInstrument!: string;

  @Field(() => DecimalScalar, {
    description: 'A reading of the first, times this, is what the second shows. Holds both ways.',
  })
  factor!: string;

  @Field(() => GraphQLLocalDate, { description: 'The day they were compared; the latest counts.' })
  comparedOn!: string;

  @Field(() => String, { nullable: true, description: 'Remarks; null if none.' })
  note!: string | null;
}

export const InstrumentComparisonConnection = connectionOf(
  'InstrumentComparison',
  () => InstrumentComparison,
  'comparisons of instruments',
);
