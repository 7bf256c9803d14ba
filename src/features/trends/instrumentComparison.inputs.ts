import { GraphQLLocalDate } from 'graphql-scalars';
import { Field, ID, InputType, Int } from 'type-graphql';
import { DecimalScalar } from '../../api/kit/scalars.js';

@InputType({ description: 'Two instruments compared on the same parts.' })
export class CompareInstrumentsInput {
  @Field(() => String, { description: 'The quantity, named as in the readings.' })
  quantity!: string;

  @Field(() => String, { description: 'The instrument that is converted, as in its readings.' })
  fromInstrument!: string;

  @Field(() => String, { description: 'The instrument that it is converted to.' })
  toInstrument!: string;

  @Field(() => DecimalScalar, {
    description: 'A reading of the first, times this, is what the second shows; above zero.',
  })
  factor!: string;

  @Field(() => GraphQLLocalDate, { description: 'The day they were compared.' })
  comparedOn!: string;

  @Field(() => String, { nullable: true, description: 'On what they were compared, and how.' })
  note?: string | null;
}

@InputType({ description: 'A correction of a comparison; what is left out stays as it is.' })
export class ChangeInstrumentComparisonInput {
  @Field(() => ID, { description: 'The comparison.' })
  id!: string;

  @Field(() => Int, { description: 'The version that you saw.' })
  version!: number;

  @Field(() => DecimalScalar, { nullable: true, description: 'The factor, above zero.' })
  factor?: string;

  @Field(() => GraphQLLocalDate, { nullable: true, description: 'The day they were compared.' })
  comparedOn?: string;

  @Field(() => String, { nullable: true, description: 'New remarks; null for none.' })
  note?: string | null;
}
