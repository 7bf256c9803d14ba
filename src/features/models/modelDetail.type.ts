import { Field, Int, ObjectType } from 'type-graphql';
import { AccessoryRole } from '../items/accessoryRole.js';

@ObjectType({
  description: 'A band and mode that a model works on, as made.',
  simpleResolvers: true,
})
export class ModelCapability {
  @Field(() => String, { description: 'Wavelength name of the band: 40m.' })
  band!: string;

  @Field(() => String, { description: 'Kind of emission: CW, SSB, AM, RTTY.' })
  mode!: string;

  @Field(() => Int, {
    nullable: true,
    description: 'Output in milliwatts; null for a receiver, or where it is not recorded.',
  })
  outputMilliwatts!: number | null;
}

@ObjectType({
  description: 'An accessory role that a model works with, or cannot work without.',
  simpleResolvers: true,
})
export class ModelRole {
  @Field(() => AccessoryRole, { description: 'What the accessory does.' })
  role!: AccessoryRole;

  @Field(() => Boolean, { description: 'It cannot work without one.' })
  isRequired!: boolean;
}
