import { Field, InputType, Int } from 'type-graphql';
import { AccessoryRole } from '../items/accessoryRole.js';

@InputType({ description: 'A band and mode that a model works on, as made.' })
export class ModelCapabilityInput {
  @Field(() => String, { description: 'Wavelength name of the band: 40m.' })
  band!: string;

  @Field(() => String, { description: 'Kind of emission in capitals: CW, SSB, AM, RTTY.' })
  mode!: string;

  @Field(() => Int, { nullable: true, description: 'Output in milliwatts.' })
  outputMilliwatts?: number | null;
}

@InputType({ description: 'An accessory role that a model works with.' })
export class ModelRoleInput {
  @Field(() => AccessoryRole, { description: 'What the accessory does.' })
  role!: AccessoryRole;

  @Field(() => Boolean, { defaultValue: true, description: 'It cannot work without one.' })
  isRequired!: boolean;
}
