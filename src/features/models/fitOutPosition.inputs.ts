import { Field, ID, InputType, Int } from 'type-graphql';
import { Zone } from '../inspections/zone.js';

@InputType({ description: 'A place in a complete set.' })
export class FitOutPositionInput {
  @Field(() => String, { description: 'As on the circuit diagram, or in words: V1, bottom cover.' })
  designator!: string;

  @Field(() => Zone, { description: 'Where in the set it is looked for.' })
  zone!: Zone;

  @Field(() => ID, { nullable: true, description: 'The part type that belongs there.' })
  partTypeId?: string | null;

  @Field(() => Boolean, { defaultValue: true, description: 'A set without it is not complete.' })
  isRequired!: boolean;

  @Field(() => Int, {
    nullable: true,
    description: 'How much it counts in the originality of a set, from 1, in any measure; null: 1.',
  })
  weight?: number | null;

  @Field(() => String, { nullable: true, description: 'Remarks.' })
  note?: string | null;
}

@InputType({ description: 'More positions for the fit-out of a model, after those it has.' })
export class AddFitOutPositionsInput {
  @Field(() => ID, { description: 'The model.' })
  modelId!: string;

  @Field(() => [FitOutPositionInput], { description: 'The positions, in order.' })
  positions!: FitOutPositionInput[];
}

@InputType({ description: 'A change of a position; what is left out stays as it is.' })
export class ChangeFitOutPositionInput {
  @Field(() => ID, { description: 'The position.' })
  id!: string;

  @Field(() => Int, { description: 'The version that you saw.' })
  version!: number;

  @Field(() => String, { nullable: true, description: 'New designator.' })
  designator?: string;

  @Field(() => Zone, { nullable: true, description: 'Where in the set it is looked for.' })
  zone?: Zone;

  @Field(() => ID, {
    nullable: true,
    description: 'The part type that belongs there; null for not said.',
  })
  partTypeId?: string | null;

  @Field(() => Boolean, { nullable: true, description: 'A set without it is not complete.' })
  isRequired?: boolean;

  @Field(() => Int, { nullable: true, description: 'Its place in the order, from 1.' })
  ordinal?: number;

  @Field(() => Int, {
    nullable: true,
    description: 'How much it counts in the originality of a set, from 1, in any measure; null: 1.',
  })
  weight?: number | null;

  @Field(() => String, { nullable: true, description: 'New remarks; null for none.' })
  note?: string | null;
}
