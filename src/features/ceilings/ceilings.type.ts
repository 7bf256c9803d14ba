import { Field, ID, InputType, Int, ObjectType } from 'type-graphql';
import { Basis } from '../../api/kit/basis.type.js';
import { describedEnum } from '../../api/kit/describedEnum.js';
import { MoneyAmount, MoneyInput } from '../../api/kit/money.type.js';
import { Node } from '../../api/kit/node.type.js';
import { CeilingPeriod } from './ceilingPeriod.js';

@ObjectType({
  implements: Node,
  description: 'The most that the owner means to spend in any month, or in any year.',
  simpleResolvers: true,
})
export class SpendingCeiling extends Node {
  @Field(() => Int, { description: 'Counts changes; send it back with your change.' })
  version!: number;

  @Field(() => CeilingPeriod, { description: 'What it holds for.' })
  period!: CeilingPeriod;
}

@InputType({ description: 'The most to spend in any month or year.' })
export class SetSpendingCeilingInput {
  @Field(() => CeilingPeriod, { description: 'What it holds for.' })
  period!: CeilingPeriod;

  @Field(() => Int, { description: 'The version that you saw; 0 for the first time.' })
  version!: number;

  @Field(() => MoneyInput, { nullable: true, description: 'The most; null: no ceiling any more.' })
  amount?: MoneyInput | null;
}

export const CeilingOf = describedEnum('CeilingOf', 'What a ceiling is on.', {
  PROJECT: 'The money of one project.',
  MONTH: 'Everything spent in the calendar month.',
  YEAR: 'Everything spent in the calendar year.',
});

@ObjectType({
  description: 'Where spending an amount would leave one ceiling.',
  simpleResolvers: true,
})
export class CeilingStanding {
  @Field(() => CeilingOf, { description: 'What the ceiling is on.' })
  of!: keyof typeof CeilingOf;

  @Field(() => ID, { nullable: true, description: 'The project; null for a month or year.' })
  projectId!: string | null;

  @Field(() => String, { description: 'Its name: the project’s title, the month, the year.' })
  name!: string;

  @Field(() => MoneyAmount, { description: 'The ceiling.' })
  ceiling!: MoneyAmount;

  @Field(() => MoneyAmount, {
    nullable: true,
    description: 'Spent so far, in the ceiling’s currency; null while a rate is missing.',
  })
  spentSoFar!: MoneyAmount | null;

  @Field(() => MoneyAmount, {
    nullable: true,
    description: 'What would be left afterwards, below zero if it breaks; null as above.',
  })
  leftAfter!: MoneyAmount | null;

  @Field(() => Boolean, { description: 'The amount takes spending beyond the ceiling.' })
  isBroken!: boolean;

  @Field(() => String, {
    nullable: true,
    description: 'The warning, with what would have to give; null when there is nothing to say.',
  })
  warning!: string | null;

  @Field(() => Basis, { description: 'What was counted, and how.' })
  basis!: Basis;
}
