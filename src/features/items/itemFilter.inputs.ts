import { GraphQLCurrency } from 'graphql-scalars';
import { Field, Float, ID, InputType } from 'type-graphql';
import { DecimalScalar } from '../../api/kit/scalars.js';
import { ReadinessLevel } from '../standing/readiness.type.js';
import { AccessoryRole } from './accessoryRole.js';

@InputType({ description: 'What something has cost so far, in one currency.' })
export class CostRangeInput {
  @Field(() => GraphQLCurrency, { description: 'ISO 4217; costs in others do not count.' })
  currency!: string;

  @Field(() => DecimalScalar, { nullable: true, description: 'At least, in the currency.' })
  atLeast?: string | null;

  @Field(() => DecimalScalar, { nullable: true, description: 'At most, in the currency.' })
  atMost?: string | null;
}

@InputType({ description: 'Which items to list; every condition given must hold.' })
export class ItemFilter {
  @Field(() => String, {
    nullable: true,
    description:
      'Words, or their beginnings, in its number, name, serial number, remarks, role or model.',
  })
  text?: string | null;

  @Field(() => ID, { nullable: true, description: 'Of this model.' })
  modelId?: string | null;

  @Field(() => ID, { nullable: true, description: 'At this place, or at a place within it.' })
  placeId?: string | null;

  @Field(() => AccessoryRole, { nullable: true, description: 'Accessories with this role.' })
  role?: AccessoryRole | null;

  @Field(() => Boolean, {
    nullable: true,
    defaultValue: false,
    description: 'True: only those that have left the collection; null: those too.',
  })
  isRetired?: boolean | null;

  @Field(() => [ReadinessLevel], { nullable: true, description: 'Ready to one of these levels.' })
  readiness?: ReadinessLevel[] | null;

  @Field(() => Float, {
    nullable: true,
    description: 'Completed at least to this share, 0 to 1; leaves out what has no tasks.',
  })
  completionAtLeast?: number | null;

  @Field(() => Float, {
    nullable: true,
    description: 'Completed at most to this share, 0 to 1; leaves out what has no tasks.',
  })
  completionAtMost?: number | null;

  @Field(() => Float, { nullable: true, description: 'At least so many hours invested.' })
  hoursAtLeast?: number | null;

  @Field(() => Float, { nullable: true, description: 'At most so many hours invested.' })
  hoursAtMost?: number | null;

  @Field(() => CostRangeInput, {
    nullable: true,
    description: 'Cost to date; leaves out what has no cost in the currency.',
  })
  cost?: CostRangeInput | null;

  @Field(() => String, { nullable: true, description: 'Its model works on this band: 40m.' })
  band?: string | null;

  @Field(() => String, {
    nullable: true,
    description: 'Its model works in this mode, on the band if one is given: CW.',
  })
  mode?: string | null;
}
