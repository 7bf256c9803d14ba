import { Field, ID, InputType, Int } from 'type-graphql';
import { DecimalScalar } from '../../api/kit/scalars.js';
import { AccessoryRole } from '../items/accessoryRole.js';
import { ItemKind } from '../items/itemKind.js';

@InputType({ description: 'A rig or accessory written down together with the lot it came in.' })
export class NewLotItemInput {
  @Field(() => ItemKind, { description: 'A rig, or what serves rigs.' })
  kind!: ItemKind;

  @Field(() => String, {
    nullable: true,
    description: 'Its number, unique; null: the next free one, such as R-013 or A-007.',
  })
  inventoryNumber?: string | null;

  @Field(() => String, { nullable: true, description: 'A name of its own.' })
  name?: string | null;

  @Field(() => AccessoryRole, {
    nullable: true,
    description: 'What an accessory is for: needed for one, left out for a rig.',
  })
  role?: AccessoryRole | null;

  @Field(() => ID, { nullable: true, description: 'Its model; null if not known.' })
  modelId?: string | null;

  @Field(() => String, { nullable: true, description: 'Serial number; null if not known.' })
  serialNumber?: string | null;

  @Field(() => String, { nullable: true, description: 'Remarks.' })
  note?: string | null;
}

@InputType({
  description: 'One thing in a lot: `itemId`, `newItem` or `sundries`, exactly one of the three.',
})
export class LotLineInput {
  @Field(() => ID, { nullable: true, description: 'A rig or accessory written down already.' })
  itemId?: string | null;

  @Field(() => NewLotItemInput, {
    nullable: true,
    description: 'A rig or accessory not yet known.',
  })
  newItem?: NewLotItemInput | null;

  @Field(() => String, { nullable: true, description: 'Other things, in words: "box of knobs".' })
  sundries?: string | null;

  @Field(() => DecimalScalar, {
    nullable: true,
    description: 'Its share, an exact number in any measure, for a lot spread by STATED_SHARES.',
  })
  statedShare?: string | null;

  @Field(() => DecimalScalar, {
    nullable: true,
    description: 'Its value in the currency of the price, for a lot spread by STATED_VALUES.',
  })
  statedValue?: string | null;
}

@InputType({ description: 'One more thing that was in a lot.' })
export class AddLotLineInput {
  @Field(() => ID, { description: 'The lot.' })
  acquisitionId!: string;

  @Field(() => LotLineInput, { description: 'What was in it too.' })
  line!: LotLineInput;
}

@InputType({ description: 'A change of one line of a lot; what is left out stays as it is.' })
export class ChangeLotLineInput {
  @Field(() => ID, { description: 'The line.' })
  id!: string;

  @Field(() => Int, { description: 'The version of the line that you saw.' })
  version!: number;

  @Field(() => ID, { nullable: true, description: 'The item that it really is; null for none.' })
  itemId?: string | null;

  @Field(() => String, { nullable: true, description: 'The sundries that it is; null for none.' })
  sundries?: string | null;

  @Field(() => DecimalScalar, { nullable: true, description: 'Its share; null for none.' })
  statedShare?: string | null;

  @Field(() => DecimalScalar, {
    nullable: true,
    description: 'Its value in the currency of the lot as it will be; null for none.',
  })
  statedValue?: string | null;
}
