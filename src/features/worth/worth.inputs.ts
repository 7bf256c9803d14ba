import { GraphQLLocalDate } from 'graphql-scalars';
import { Field, ID, InputType, Int } from 'type-graphql';
import { MoneyInput } from '../../api/kit/money.type.js';
import { ConditionStandard } from './conditionStandard.js';
import { ValueBasis } from './valueBasis.js';

@InputType({ description: 'What a set of a model, or one item, is held to be worth, by somebody.' })
export class NoteValueInput {
  @Field(() => ID, { nullable: true, description: 'Any set of this model; or else `itemId`.' })
  modelId?: string | null;

  @Field(() => ID, { nullable: true, description: 'This rig or accessory; or else `modelId`.' })
  itemId?: string | null;

  @Field(() => ValueBasis, { description: 'What sort of value.' })
  basis!: ValueBasis;

  @Field(() => ConditionStandard, { description: 'The condition that it is for.' })
  standard!: ConditionStandard;

  @Field(() => GraphQLLocalDate, { description: 'The day for which it holds.' })
  valuedOn!: string;

  @Field(() => MoneyInput, { description: 'The value, above zero.' })
  likely!: MoneyInput;

  @Field(() => MoneyInput, {
    nullable: true,
    description: 'One chance in ten that it is less; given together with `high`.',
  })
  low?: MoneyInput | null;

  @Field(() => MoneyInput, { nullable: true, description: 'One chance in ten that it is more.' })
  high?: MoneyInput | null;

  @Field(() => String, { description: 'Who says so: an appraiser, a sale, a list.' })
  source!: string;

  @Field(() => String, { nullable: true, description: 'Remarks.' })
  note?: string | null;
}

@InputType({ description: 'A value note set right: all of it as it should read.' })
export class ChangeValueNoteInput {
  @Field(() => ID, { description: 'The value note.' })
  id!: string;

  @Field(() => Int, { description: 'The version that you saw.' })
  version!: number;

  @Field(() => NoteValueInput, {
    nullable: true,
    description: 'What it should say; left out, it stays as it is.',
  })
  reads?: NoteValueInput | null;

  @Field(() => Boolean, { nullable: true, description: 'Strike it out, or count it again.' })
  isStruck?: boolean | null;
}

@InputType({ description: 'What the owner alone can say of an item; what is left out stays.' })
export class SetItemOutlookInput {
  @Field(() => ID, { description: 'The rig or accessory.' })
  itemId!: string;

  @Field(() => Int, { description: 'The version that you saw; 0 for the first time.' })
  version!: number;

  @Field(() => ConditionStandard, {
    nullable: true,
    description: 'The condition that it is in; null: taken from its projects.',
  })
  presentStandard?: ConditionStandard | null;

  @Field(() => Int, {
    nullable: true,
    description:
      'Chance in a hundred, 0 to 100, that finishing reaches the standard; null: unsaid.',
  })
  successPercent?: number | null;

  @Field(() => MoneyInput, {
    nullable: true,
    description: 'What having it finished is worth to you beyond its price; null for nothing.',
  })
  premium?: MoneyInput | null;

  @Field(() => String, { nullable: true, description: 'Why: rarity, attachment. Null for none.' })
  premiumReason?: string | null;
}

@InputType({ description: 'What the owner reckons with throughout; what is left out stays.' })
export class SetWorthTermsInput {
  @Field(() => Int, { description: 'The version that you saw; 0 for the first time.' })
  version!: number;

  @Field(() => MoneyInput, {
    nullable: true,
    description: 'For an hour of own time; null: own time has no price.',
  })
  hourRate?: MoneyInput | null;

  @Field(() => Int, { nullable: true, description: 'Of a price, what selling takes; 0 to 100.' })
  saleCostPercent?: number;

  @Field(() => Int, {
    nullable: true,
    description: 'Minutes of own time to take out, test and sell one part; 0 to 1440.',
  })
  partEffortMinutes?: number;

  @Field(() => Int, {
    nullable: true,
    description: 'Of a hundred fitted parts, how many prove fit to sell; 0 to 100.',
  })
  usablePartsPercent?: number;

  @Field(() => Int, {
    nullable: true,
    description: 'Of a hundred spares kept, how many would be needed one day; 0 to 100.',
  })
  spareUsePercent?: number;
}
