import { InputType } from 'type-graphql';
import { ChangeItemInput, CreateItemInput } from './item.inputs.js';

@InputType({ description: 'A new rig.' })
export class CreateRigInput extends CreateItemInput {}

@InputType({ description: 'A change of a rig; what is left out stays as it is.' })
export class ChangeRigInput extends ChangeItemInput {}
