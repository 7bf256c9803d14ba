import { Field, InputType } from 'type-graphql';
import { AccessoryRole } from './accessoryRole.js';
import { ChangeItemInput, CreateItemInput } from './item.inputs.js';

@InputType({ description: 'A new accessory.' })
export class CreateAccessoryInput extends CreateItemInput {
  @Field(() => AccessoryRole, { description: 'What it is for.' })
  role!: AccessoryRole;
}

@InputType({ description: 'A change of an accessory; what is left out stays as it is.' })
export class ChangeAccessoryInput extends ChangeItemInput {
  @Field(() => AccessoryRole, { nullable: true, description: 'What it is for.' })
  role?: AccessoryRole;
}
