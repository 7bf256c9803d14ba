import { Field, ID, InputType, Int } from 'type-graphql';
import { AccessoryRole } from '../items/accessoryRole.js';

@InputType({ description: 'An accessory is to serve a rig.' })
export class AssignAccessoryInput {
  @Field(() => ID, { description: 'The accessory.' })
  accessoryId!: string;

  @Field(() => ID, { description: 'The rig that it serves.' })
  rigId!: string;

  @Field(() => AccessoryRole, { description: 'In which role; the accessory must have it.' })
  role!: AccessoryRole;

  @Field(() => Boolean, {
    defaultValue: false,
    description: 'It serves this rig only, even while others could use it.',
  })
  isExclusive!: boolean;

  @Field(() => String, { nullable: true, description: 'Remarks.' })
  note?: string | null;
}

@InputType({ description: 'An accessory serves a rig no longer.' })
export class ReleaseAccessoryInput {
  @Field(() => ID, { description: 'The service that ends.' })
  serviceId!: string;

  @Field(() => Int, { description: 'The version that you saw.' })
  version!: number;
}
