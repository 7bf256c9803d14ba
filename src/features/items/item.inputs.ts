import { Field, ID, InputType, Int } from 'type-graphql';

const madeDescription =
  'When it was made, as EDTF (ISO 8601-2): 1963, 1963-05, 1963? for uncertain, 1963~ for about, 196X for the decade, 1962/1964 for a span.';

@InputType({ description: 'What is written down of a new item.' })
export abstract class CreateItemInput {
  @Field(() => String, { description: 'Your own number for it, unique in the collection: R-007.' })
  inventoryNumber!: string;

  @Field(() => String, { nullable: true, description: 'A name of its own.' })
  name?: string | null;

  @Field(() => ID, { nullable: true, description: 'Its model.' })
  modelId?: string | null;

  @Field(() => String, { nullable: true, description: 'Serial number.' })
  serialNumber?: string | null;

  @Field(() => String, { nullable: true, description: madeDescription })
  madeEdtf?: string | null;

  @Field(() => ID, { nullable: true, description: 'Where it stands.' })
  placeId?: string | null;

  @Field(() => String, { nullable: true, description: 'Remarks.' })
  note?: string | null;
}

@InputType({ description: "A change of an item's own data; what is left out stays as it is." })
export abstract class ChangeItemInput {
  @Field(() => ID, { description: 'The item.' })
  id!: string;

  @Field(() => Int, { description: 'The version that you saw.' })
  version!: number;

  @Field(() => String, { nullable: true, description: 'New inventory number.' })
  inventoryNumber?: string;

  @Field(() => String, { nullable: true, description: 'A name of its own; null for none.' })
  name?: string | null;

  @Field(() => ID, { nullable: true, description: 'Its model; null for unknown.' })
  modelId?: string | null;

  @Field(() => String, { nullable: true, description: 'Serial number; null for not recorded.' })
  serialNumber?: string | null;

  @Field(() => String, { nullable: true, description: `${madeDescription} Null: not recorded.` })
  madeEdtf?: string | null;

  @Field(() => String, { nullable: true, description: 'New remarks; null for none.' })
  note?: string | null;
}

@InputType({ description: 'An item that leaves the collection; its records stay.' })
export class RetireItemInput {
  @Field(() => ID, { description: 'The rig or accessory.' })
  id!: string;

  @Field(() => Int, { description: 'The version that you saw.' })
  version!: number;

  @Field(() => String, { description: 'Why: sold, broken up for parts, lost.' })
  reason!: string;
}

@InputType({ description: 'An item that comes back into the collection.' })
export class ReturnItemInput {
  @Field(() => ID, { description: 'The rig or accessory.' })
  id!: string;

  @Field(() => Int, { description: 'The version that you saw.' })
  version!: number;
}
