import { Field, ID, InputType, Int } from 'type-graphql';
import { DecimalScalar } from '../../api/kit/scalars.js';
import { TubeClass } from '../reference/tubeReference.type.js';
import { PartKind } from './partKind.js';

@InputType({ description: 'What a part is rated for.' })
export class RatingInput {
  @Field(() => String, { description: 'Name of the quantity: heater voltage, tolerance.' })
  name!: string;

  @Field(() => DecimalScalar, { description: 'The value, in `unit`.' })
  value!: string;

  @Field(() => String, { description: 'UCUM code of the unit: V, mA, uF.' })
  unit!: string;

  @Field(() => String, { nullable: true, description: 'Where it is published.' })
  source?: string | null;
}

@InputType({
  description: 'How a tube is connected and what it is made to do, by your own source.',
})
export class TubeFitInput {
  @Field(() => String, { nullable: true, description: 'Basing code, as in the manuals: 7BK.' })
  base?: string | null;

  @Field(() => TubeClass, { nullable: true, description: 'What it is made to do.' })
  tubeClass?: TubeClass | null;

  @Field(() => String, {
    nullable: true,
    description:
      'Where it is published: title, edition, page. Without one nothing is proven by it.',
  })
  source?: string | null;
}

@InputType({ description: 'A new kind of part.' })
export class CreatePartTypeInput {
  @Field(() => PartKind, { description: 'What sort of part it is.' })
  kind!: PartKind;

  @Field(() => String, { description: 'What it is called: 6146B.' })
  designation!: string;

  @Field(() => String, { nullable: true, description: 'In a few words.' })
  description?: string | null;

  @Field(() => [RatingInput], { defaultValue: [], description: 'Its ratings.' })
  ratings!: RatingInput[];

  @Field(() => TubeFitInput, { nullable: true, description: 'Of a tube: base and class.' })
  tube?: TubeFitInput | null;
}

@InputType({ description: 'A change of a kind of part; what is left out stays as it is.' })
export class ChangePartTypeInput {
  @Field(() => ID, { description: 'The part type.' })
  id!: string;

  @Field(() => Int, { description: 'The version that you saw.' })
  version!: number;

  @Field(() => PartKind, { nullable: true, description: 'What sort of part it is.' })
  kind?: PartKind;

  @Field(() => String, { nullable: true, description: 'New designation.' })
  designation?: string;

  @Field(() => String, { nullable: true, description: 'In a few words; null for none.' })
  description?: string | null;

  @Field(() => [RatingInput], { nullable: true, description: 'All its ratings, anew.' })
  ratings?: RatingInput[];

  @Field(() => TubeFitInput, {
    nullable: true,
    description: 'Of a tube: base and class, anew; null for none.',
  })
  tube?: TubeFitInput | null;

  @Field(() => Boolean, { nullable: true, description: 'Take it out of lists, or back in.' })
  isRetired?: boolean;
}

@InputType({ description: 'Which kinds of part to list.' })
export class PartTypeFilter {
  @Field(() => String, {
    nullable: true,
    description: 'Words in the designation or the description.',
  })
  text?: string | null;

  @Field(() => PartKind, { nullable: true, description: 'Only this sort of part.' })
  kind?: PartKind | null;

  @Field(() => Boolean, {
    nullable: true,
    defaultValue: false,
    description: 'True: only those taken out of lists; null: those too.',
  })
  isRetired?: boolean | null;
}
