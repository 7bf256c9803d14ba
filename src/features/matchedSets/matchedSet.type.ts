import { Field, Float, Int, ObjectType } from 'type-graphql';
import { Basis } from '../../api/kit/basis.type.js';
import { connectionOf } from '../../api/kit/connectionOf.js';
import { describedEnum } from '../../api/kit/describedEnum.js';
import { Node } from '../../api/kit/node.type.js';
import { DecimalScalar } from '../../api/kit/scalars.js';
import { ReadingTier } from '../readings/readingTier.js';

export const MatchWord = describedEnum('MatchWord', 'Whether the members of a set read alike.', {
  MATCHED: 'Their latest readings lie no farther apart than the limit.',
  MISMATCHED: 'Their latest readings lie farther apart than the limit.',
  UNKNOWN: 'Not every member has a reading of the same kind by the same instrument.',
});
export type MatchWord = keyof typeof MatchWord;

@ObjectType({ description: 'How far the members of a set lie apart.', simpleResolvers: true })
export class Mismatch {
  @Field(() => MatchWord, { description: 'The answer in a word.' })
  word!: MatchWord;

  @Field(() => Float, {
    nullable: true,
    description: 'Highest less lowest reading, per cent of their mean; null when unknown.',
  })
  percent!: number | null;

  @Field(() => Basis, { description: 'How it came about.' })
  basis!: Basis;
}

@ObjectType({
  implements: Node,
  description: 'Components that are to read alike: a pair of finals, a quad of diodes.',
  simpleResolvers: true,
})
export class MatchedSet extends Node {
  @Field(() => Int, { description: 'Counts changes; send it back with your change.' })
  version!: number;

  @Field(() => String, { description: 'What it is.' })
  name!: string;

  @Field(() => String, { description: 'The quantity in which they are to match.' })
  quantity!: string;

  @Field(() => ReadingTier, { description: 'Where the readings are taken that are compared.' })
  tier!: ReadingTier;

  @Field(() => DecimalScalar, {
    description: 'The spread that still counts as matched, per cent of the mean.',
  })
  largestMismatchPercent!: string;

  @Field(() => String, {
    nullable: true,
    description: 'Where that limit comes from; null if not recorded.',
  })
  source!: string | null;

  @Field(() => String, { nullable: true, description: 'Remarks; null if none.' })
  note!: string | null;
}

export const MatchedSetConnection = connectionOf('MatchedSet', () => MatchedSet, 'matched sets');
