import { Field, ID, InputType, Int } from 'type-graphql';
import { MoneyInput } from '../../api/kit/money.type.js';
import { InquiryKind } from './inquiryKind.js';
import { Uncertainty } from './uncertainty.js';

@InputType({ description: 'A way to find out more before going on.' })
export class PlanInquiryInput {
  @Field(() => ID, { description: 'The project.' })
  projectId!: string;

  @Field(() => InquiryKind, { description: 'How it finds out.' })
  kind!: InquiryKind;

  @Field(() => String, { description: 'What is done.' })
  description!: string;

  @Field(() => Uncertainty, { description: 'What it would settle.' })
  resolves!: Uncertainty;

  @Field(() => ID, { nullable: true, description: 'The planned cost; for PLANNED_COST alone.' })
  plannedCostId?: string | null;

  @Field(() => ID, { nullable: true, description: 'The part type; for PART_PRICE alone.' })
  partTypeId?: string | null;

  @Field(() => MoneyInput, { description: 'What it costs; 0 for nothing.' })
  cost!: MoneyInput;

  @Field(() => Int, { defaultValue: 0, description: 'Own time that it takes, in minutes.' })
  minutes!: number;
}

@InputType({ description: 'What came of an inquiry; what is left out stays as it is.' })
export class ChangeInquiryInput {
  @Field(() => ID, { description: 'The inquiry.' })
  id!: string;

  @Field(() => Int, { description: 'The version that you saw.' })
  version!: number;

  @Field(() => String, { nullable: true, description: 'What is done.' })
  description?: string;

  @Field(() => MoneyInput, { nullable: true, description: 'What it costs.' })
  cost?: MoneyInput;

  @Field(() => Int, { nullable: true, description: 'Own time that it takes, in minutes.' })
  minutes?: number;

  @Field(() => Boolean, { nullable: true, description: 'It is done, or needed no longer.' })
  isDone?: boolean;

  @Field(() => String, { nullable: true, description: 'What it told; null for nothing.' })
  outcome?: string | null;

  @Field(() => Boolean, {
    nullable: true,
    description: 'True strikes it out: it is kept, and no longer counts. False takes that back.',
  })
  isStruck?: boolean | null;
}
