import { Field, ID, InputType, Int } from 'type-graphql';

@InputType({ description: 'A new place.' })
export class CreatePlaceInput {
  @Field(() => String, { description: 'What the place is called.' })
  name!: string;

  @Field(() => ID, { nullable: true, description: 'The place that it is in.' })
  withinId?: string | null;

  @Field(() => String, { nullable: true, description: 'Remarks.' })
  note?: string | null;
}

@InputType({ description: 'A change of a place; what is left out stays as it is.' })
export class ChangePlaceInput {
  @Field(() => ID, { description: 'The place.' })
  id!: string;

  @Field(() => Int, { description: 'The version that you saw.' })
  version!: number;

  @Field(() => String, { nullable: true, description: 'New name.' })
  name?: string;

  @Field(() => ID, { nullable: true, description: 'The place that it is in; null for none.' })
  withinId?: string | null;

  @Field(() => String, { nullable: true, description: 'New remarks; null for none.' })
  note?: string | null;

  @Field(() => Boolean, { nullable: true, description: 'Take it out of use, or back into use.' })
  isRetired?: boolean;
}
