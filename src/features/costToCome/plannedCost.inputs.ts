import { Field, ID, InputType, Int } from 'type-graphql';
import { MoneyInput } from '../../api/kit/money.type.js';
import { ConditionStandard } from '../worth/conditionStandard.js';
import { PlannedCostKind } from './plannedCostKind.js';

@InputType({ description: 'What something may cost: three amounts of one currency that rise.' })
export class ThreePointMoneyInput {
  @Field(() => MoneyInput, { description: 'If all goes well.' })
  optimistic!: MoneyInput;

  @Field(() => MoneyInput, { description: 'Most likely.' })
  likely!: MoneyInput;

  @Field(() => MoneyInput, { description: 'If little goes well.' })
  pessimistic!: MoneyInput;
}

@InputType({ description: 'A cost that a project will have, beside parts with noted prices.' })
export class PlanCostInput {
  @Field(() => ID, { description: 'The project.' })
  projectId!: string;

  @Field(() => PlannedCostKind, { description: 'What sort of cost.' })
  kind!: PlannedCostKind;

  @Field(() => String, { description: 'What for.' })
  description!: string;

  @Field(() => ThreePointMoneyInput, { description: 'What it may come to.' })
  estimate!: ThreePointMoneyInput;

  @Field(() => ConditionStandard, {
    nullable: true,
    description: 'The least standard that needs it; left out: every standard does.',
  })
  neededFrom?: ConditionStandard | null;

  @Field(() => String, { nullable: true, description: 'Remarks.' })
  note?: string | null;
}

@InputType({ description: 'A change of a planned cost; what is left out stays as it is.' })
export class ChangePlannedCostInput {
  @Field(() => ID, { description: 'The planned cost.' })
  id!: string;

  @Field(() => Int, { description: 'The version that you saw.' })
  version!: number;

  @Field(() => String, { nullable: true, description: 'What for.' })
  description?: string;

  @Field(() => ThreePointMoneyInput, { nullable: true, description: 'What it may come to.' })
  estimate?: ThreePointMoneyInput;

  @Field(() => ConditionStandard, { nullable: true, description: 'Null: every standard needs it.' })
  neededFrom?: ConditionStandard | null;

  @Field(() => Boolean, {
    nullable: true,
    description: 'True: it is spent (as an expense) or not needed, and no longer to come.',
  })
  isSettled?: boolean;

  @Field(() => String, { nullable: true, description: 'New remarks; null for none.' })
  note?: string | null;
}
