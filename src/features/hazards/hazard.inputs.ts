import { GraphQLDateTimeISO } from 'graphql-scalars';
import { Field, ID, InputType, Int } from 'type-graphql';
import { HazardKind } from './hazardKind.js';

@InputType({ description: 'Something in an item that can hurt.' })
export class RaiseHazardInput {
  @Field(() => ID, { description: 'The rig or accessory.' })
  itemId!: string;

  @Field(() => HazardKind, { description: 'What can hurt.' })
  kind!: HazardKind;

  @Field(() => String, { nullable: true, description: 'Where and how it shows.' })
  note?: string | null;

  @Field(() => ID, { nullable: true, description: 'The finding that it belongs to.' })
  findingId?: string | null;

  @Field(() => GraphQLDateTimeISO, { nullable: true, description: 'When; now if left out.' })
  raisedAt?: Date | null;
}

@InputType({ description: 'A hazard is cleared by a check that somebody did.' })
export class ClearHazardInput {
  @Field(() => ID, { description: 'The hazard.' })
  id!: string;

  @Field(() => Int, { description: 'The version that you saw.' })
  version!: number;

  @Field(() => String, {
    description:
      'The check in words, with what it showed: "0.2 V across C1, 60 s after switching off".',
  })
  clearedByCheck!: string;

  @Field(() => ID, { description: 'The party who did the check.' })
  clearedById!: string;

  @Field(() => GraphQLDateTimeISO, { nullable: true, description: 'When; now if left out.' })
  clearedAt?: Date | null;
}

@InputType({ description: 'A correction of a hazard; what is left out stays as it is.' })
export class ChangeHazardInput {
  @Field(() => ID, { description: 'The hazard.' })
  id!: string;

  @Field(() => Int, { description: 'The version that you saw.' })
  version!: number;

  @Field(() => HazardKind, { nullable: true, description: 'What can hurt.' })
  kind?: HazardKind;

  @Field(() => String, { nullable: true, description: 'New note; null for none.' })
  note?: string | null;

  @Field(() => Boolean, {
    nullable: true,
    description: 'True: it stands again, and the check that cleared it is set aside.',
  })
  isOpenAgain?: boolean;
}
