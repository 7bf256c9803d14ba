import { Field, ID, InputType, Int } from 'type-graphql';
import { DecimalScalar } from '../../api/kit/scalars.js';
import { ReadingTier } from './readingTier.js';

@InputType({ description: 'A new limit of a part type or of a model.' })
export class SetLimitInput {
  @Field(() => ID, { description: 'The part type or the model that it holds for.' })
  ofId!: string;

  @Field(() => String, { description: 'Name of the quantity: transconductance, leakage current.' })
  quantity!: string;

  @Field(() => ReadingTier, {
    nullable: true,
    description: 'Where it holds; left out: on the tester and in the circuit.',
  })
  tier?: ReadingTier | null;

  @Field(() => DecimalScalar, { nullable: true, description: 'The least it may be, in `unit`.' })
  lower?: string | null;

  @Field(() => DecimalScalar, { nullable: true, description: 'The most it may be, in `unit`.' })
  upper?: string | null;

  @Field(() => String, { description: 'UCUM code of the unit: V, mA, uF.' })
  unit!: string;

  @Field(() => String, {
    nullable: true,
    description: 'Where it was published, or "common practice, no source".',
  })
  source?: string | null;
}

@InputType({ description: 'A change of a limit; what is left out stays as it is.' })
export class ChangeLimitInput {
  @Field(() => ID, { description: 'The limit.' })
  id!: string;

  @Field(() => Int, { description: 'The version that you saw.' })
  version!: number;

  @Field(() => DecimalScalar, {
    nullable: true,
    description: 'The least it may be, in `unit`; null for no lower end.',
  })
  lower?: string | null;

  @Field(() => DecimalScalar, {
    nullable: true,
    description: 'The most it may be, in `unit`; null for no upper end.',
  })
  upper?: string | null;

  @Field(() => String, { nullable: true, description: 'UCUM code of the unit.' })
  unit?: string;

  @Field(() => String, { nullable: true, description: 'Where it was published; null if unknown.' })
  source?: string | null;
}
