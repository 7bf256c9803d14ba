import { GraphQLLocalDate } from 'graphql-scalars';
import { Field, ObjectType } from 'type-graphql';
import { Basis } from '../../api/kit/basis.type.js';
import { MoneyAmount } from '../../api/kit/money.type.js';
import { ConvertedSum } from '../rates/exchangeRate.type.js';
import { ConditionStandard } from '../worth/conditionStandard.js';
import { ValueBasis } from '../worth/valueBasis.js';

@ObjectType({ description: 'One item of an insurance schedule.', simpleResolvers: true })
export class InsuredItem {
  @Field(() => String, { description: 'Its inventory number.' })
  inventoryNumber!: string;

  @Field(() => String, { description: 'What it is: maker and type, or its name.' })
  what!: string;

  @Field(() => String, { nullable: true, description: 'Its serial number; null if not recorded.' })
  serialNumber!: string | null;

  @Field(() => MoneyAmount, {
    nullable: true,
    description: 'Its value as noted; null when no value note is of its condition.',
  })
  value!: MoneyAmount | null;

  @Field(() => ValueBasis, { nullable: true, description: 'What sort of value it is; or null.' })
  valueBasis!: ValueBasis | null;

  @Field(() => ConditionStandard, { nullable: true, description: 'For which condition; or null.' })
  standard!: ConditionStandard | null;

  @Field(() => GraphQLLocalDate, { nullable: true, description: 'The day of the value; or null.' })
  valuedOn!: string | null;

  @Field(() => String, { nullable: true, description: 'Who says so; null without a value.' })
  source!: string | null;

  @Field(() => String, {
    nullable: true,
    description: 'Where its cover picture is served; null when it has none.',
  })
  picturePath!: string | null;
}

@ObjectType({
  description: 'What an insurer asks for: each item with serial, value, its basis and its date.',
  simpleResolvers: true,
})
export class InsuranceSchedule {
  @Field(() => ConvertedSum, {
    description: 'All values in the currency of the collection; refused where a rate is missing.',
  })
  total!: ConvertedSum;

  @Field(() => [String], { description: 'Inventory numbers of items that no value is noted for.' })
  unvalued!: string[];

  @Field(() => String, { description: 'The schedule as CSV (RFC 4180).' })
  csv!: string;

  @Field(() => String, { description: 'Where the same is served as PDF, with photographs.' })
  pdfPath!: string;

  @Field(() => Basis, { description: 'What was counted, and how each value was chosen.' })
  basis!: Basis;
}
