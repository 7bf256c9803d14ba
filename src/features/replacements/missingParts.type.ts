import { Field, Int, ObjectType } from 'type-graphql';
import { Basis } from '../../api/kit/basis.type.js';
import { describedEnum } from '../../api/kit/describedEnum.js';
import { MoneyAmount } from '../../api/kit/money.type.js';
import { PriceEstimate } from '../prices/price.type.js';

@ObjectType({
  description: 'A position of an item that is empty, or wrongly filled.',
  simpleResolvers: true,
})
export class MissingPart {
  @Field(() => Boolean, { description: 'Something else sits there; false: the place is empty.' })
  isWronglyFilled!: boolean;

  @Field(() => PriceEstimate, {
    nullable: true,
    description: 'What one costs by the prices noted; null when none was noted.',
  })
  price!: PriceEstimate | null;
}

export const DonorEvidence = describedEnum(
  'DonorEvidence',
  'How a part is known to sit in a set.',
  {
    FITTING: 'A component of this type is recorded as fitted.',
    CHECK: 'A check of the fit-out found the place filled; the part itself is not recorded.',
  },
);
export type DonorEvidence = keyof typeof DonorEvidence;

@ObjectType({
  description: 'A set of the collection that has such a part fitted.',
  simpleResolvers: true,
})
export class Donor {
  @Field(() => String, { description: 'Where it sits there.' })
  designator!: string;

  @Field(() => DonorEvidence, { description: 'How it is known that it sits there.' })
  evidence!: DonorEvidence;

  @Field(() => Boolean, {
    description: 'That set is to be taken apart for others; false: it would then lack the part.',
  })
  isPartsDonor!: boolean;
}

@ObjectType({ description: 'What the missing parts would cost.', simpleResolvers: true })
export class MissingPartsCost {
  @Field(() => [MoneyAmount], {
    description: 'Sum of the median prices of required parts, a currency each; not converted.',
  })
  totals!: MoneyAmount[];

  @Field(() => Int, { description: 'Required parts that no recent price was noted for.' })
  unpricedCount!: number;

  @Field(() => Basis, { description: 'What was counted, and how.' })
  basis!: Basis;
}
