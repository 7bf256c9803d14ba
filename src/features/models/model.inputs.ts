import { Field, ID, InputType, Int } from 'type-graphql';
import { ItemKind } from '../items/itemKind.js';
import { FitOutPositionInput } from './fitOutPosition.inputs.js';
import { ModelCapabilityInput, ModelRoleInput } from './modelDetail.inputs.js';

@InputType({ description: 'A new model, with all that a complete one has.' })
export class CreateModelInput {
  @Field(() => ItemKind, { description: 'Whether it is a set or serves one.' })
  itemKind!: ItemKind;

  @Field(() => String, { description: 'Who made it.' })
  maker!: string;

  @Field(() => String, { description: 'What its maker called it.' })
  designation!: string;

  @Field(() => String, { nullable: true, description: 'In a few words.' })
  description?: string | null;

  @Field(() => Int, { nullable: true, description: 'First year made.' })
  firstYearMade?: number | null;

  @Field(() => Int, { nullable: true, description: 'Last year made.' })
  lastYearMade?: number | null;

  @Field(() => String, { nullable: true, description: 'Remarks.' })
  note?: string | null;

  @Field(() => [ModelCapabilityInput], { defaultValue: [], description: 'Its bands and modes.' })
  capabilities!: ModelCapabilityInput[];

  @Field(() => [ModelRoleInput], { defaultValue: [], description: 'Accessories it works with.' })
  roles!: ModelRoleInput[];

  @Field(() => [FitOutPositionInput], { defaultValue: [], description: 'Its fit-out, in order.' })
  fitOut!: FitOutPositionInput[];
}

@InputType({ description: 'A change of a model; what is left out stays as it is.' })
export class ChangeModelInput {
  @Field(() => ID, { description: 'The model.' })
  id!: string;

  @Field(() => Int, { description: 'The version that you saw.' })
  version!: number;

  @Field(() => String, { nullable: true, description: 'Who made it.' })
  maker?: string;

  @Field(() => String, { nullable: true, description: 'What its maker called it.' })
  designation?: string;

  @Field(() => String, { nullable: true, description: 'In a few words; null for none.' })
  description?: string | null;

  @Field(() => Int, { nullable: true, description: 'First year made; null for not recorded.' })
  firstYearMade?: number | null;

  @Field(() => Int, { nullable: true, description: 'Last year made; null for not recorded.' })
  lastYearMade?: number | null;

  @Field(() => String, { nullable: true, description: 'New remarks; null for none.' })
  note?: string | null;

  @Field(() => [ModelCapabilityInput], {
    nullable: true,
    description: 'All its bands and modes, anew.',
  })
  capabilities?: ModelCapabilityInput[];

  @Field(() => [ModelRoleInput], { nullable: true, description: 'All its roles, anew.' })
  roles?: ModelRoleInput[];

  @Field(() => Boolean, { nullable: true, description: 'Take it out of lists, or bring it back.' })
  isRetired?: boolean;
}

@InputType({ description: 'Which models to list.' })
export class ModelFilter {
  @Field(() => String, {
    nullable: true,
    description: 'Words in the maker, the designation or the description.',
  })
  text?: string | null;

  @Field(() => ItemKind, { nullable: true, description: 'Only models of rigs, or of accessories.' })
  itemKind?: ItemKind | null;

  @Field(() => Boolean, {
    nullable: true,
    defaultValue: false,
    description: 'True: only those taken out of lists; null: those too.',
  })
  isRetired?: boolean | null;
}
