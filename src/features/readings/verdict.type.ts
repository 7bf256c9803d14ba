import { Field, Int, ObjectType } from 'type-graphql';
import { describedEnum } from '../../api/kit/describedEnum.js';
import { DecimalScalar } from '../../api/kit/scalars.js';

export const VerdictWord = describedEnum(
  'VerdictWord',
  'What the limits say of a reading. A word about one quantity, not about the part.',
  {
    WITHIN_LIMITS: 'It keeps to every limit that applies, ends included.',
    BELOW_LIMIT: 'It is less than the highest lower end that applies.',
    ABOVE_LIMIT: 'It is more than the lowest upper end that applies.',
    NO_LIMIT: 'No limit is recorded for this quantity where it was taken.',
  },
);
export type VerdictWord = keyof typeof VerdictWord;

@ObjectType({
  description: 'The range that a reading was held against: the strictest ends that applied.',
  simpleResolvers: true,
})
export class HeldLimit {
  @Field(() => DecimalScalar, { description: 'The reading in the unit of the limit.' })
  value!: string;

  @Field(() => String, { description: 'Unit of the limit, UCUM.' })
  unit!: string;

  @Field(() => DecimalScalar, { nullable: true, description: 'Lower end; null if it has none.' })
  lower!: string | null;

  @Field(() => DecimalScalar, { nullable: true, description: 'Upper end; null if it has none.' })
  upper!: string | null;

  @Field(() => String, {
    nullable: true,
    description: 'Where the limit was published; null if not recorded.',
  })
  source!: string | null;
}

@ObjectType({
  description:
    'A reading held against the limits of its part type or model. Computed, never typed in.',
  simpleResolvers: true,
})
export class Verdict {
  @Field(() => VerdictWord, { description: 'The answer in a word.' })
  word!: VerdictWord;

  @Field(() => HeldLimit, {
    nullable: true,
    description: 'What it was held against; null when no limit applied.',
  })
  limit!: HeldLimit | null;

  @Field(() => Int, { description: 'How many limits applied.' })
  limitsApplied!: number;
}
