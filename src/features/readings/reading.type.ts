import { GraphQLDateTimeISO } from 'graphql-scalars';
import { Field, Int, ObjectType } from 'type-graphql';
import { connectionOf } from '../../api/kit/connectionOf.js';
import { Node } from '../../api/kit/node.type.js';
import { DecimalScalar } from '../../api/kit/scalars.js';
import { ReadingTier } from './readingTier.js';

@ObjectType({
  implements: Node,
  description: 'A measured quantity, on a component or on an item as a whole.',
  simpleResolvers: true,
})
export class Reading extends Node {
  @Field(() => Int, { description: 'Counts changes; send it back with your change.' })
  version!: number;

  @Field(() => String, { description: 'What was measured: transconductance, leakage current.' })
  quantity!: string;

  @Field(() => DecimalScalar, { description: 'What was read, in `unit`, as written down.' })
  value!: string;

  @Field(() => String, { description: 'Unit, UCUM.' })
  unit!: string;

  @Field(() => ReadingTier, { description: 'On a tester, or in circuit.' })
  tier!: ReadingTier;

  @Field(() => String, { nullable: true, description: 'Instrument; null if not recorded.' })
  instrument!: string | null;

  @Field(() => String, { nullable: true, description: 'How it was done; null if not recorded.' })
  method!: string | null;

  @Field(() => GraphQLDateTimeISO, { description: 'When it was taken.' })
  takenAt!: string;

  @Field(() => String, { nullable: true, description: 'Remarks; null if none.' })
  note!: string | null;
}

export const ReadingConnection = connectionOf('Reading', () => Reading, 'readings');
