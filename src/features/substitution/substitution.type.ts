import { GraphQLDateTimeISO } from 'graphql-scalars';
import { Field, Int, ObjectType } from 'type-graphql';
import { Basis } from '../../api/kit/basis.type.js';
import { describedEnum } from '../../api/kit/describedEnum.js';
import { MoneyAmount } from '../../api/kit/money.type.js';
import { Node } from '../../api/kit/node.type.js';
import { SubstitutionGrade } from './substitutionGrade.js';

export const SubstituteOrigin = describedEnum('SubstituteOrigin', 'Who says that it would serve.', {
  RECORDED: 'A person wrote it down.',
  COMPUTED: 'It follows from ratings.',
});
export type SubstituteOrigin = keyof typeof SubstituteOrigin;

@ObjectType({
  implements: Node,
  description: 'A person wrote down that one part type may stand in for another.',
  simpleResolvers: true,
})
export class Substitution extends Node {
  @Field(() => Int, { description: 'Counts changes; send it back with your change.' })
  version!: number;

  @Field(() => SubstitutionGrade, { description: 'How well.' })
  grade!: SubstitutionGrade;

  @Field(() => Boolean, { description: 'The original stands in for the substitute as well.' })
  isMutual!: boolean;

  @Field(() => String, { nullable: true, description: 'What changes for the worse; or null.' })
  consequence!: string | null;

  @Field(() => String, { nullable: true, description: 'What must be checked again; or null.' })
  recheck!: string | null;

  @Field(() => String, { nullable: true, description: 'Who says so; null if not recorded.' })
  source!: string | null;

  @Field(() => GraphQLDateTimeISO, { nullable: true, description: 'Out of use since; or null.' })
  retiredAt!: string | null;
}

@ObjectType({
  description:
    'What stands in for a part type, or why it does not. Ratings say what may be tried; only the circuit proves it.',
  simpleResolvers: true,
})
export class Substitute {
  @Field(() => SubstituteOrigin, { description: 'Who says so.' })
  origin!: SubstituteOrigin;

  @Field(() => Boolean, {
    nullable: true,
    description:
      'It serves, or does not; null: undecided, because what decides rests on unconfirmed ratings.',
  })
  serves!: boolean | null;

  @Field(() => SubstitutionGrade, {
    nullable: true,
    description: 'How well; null when it does not serve or while that is undecided.',
  })
  grade!: SubstitutionGrade | null;

  @Field(() => SubstitutionGrade, {
    nullable: true,
    description: 'What the grade would be if the unconfirmed ratings are right; null if none.',
  })
  supposedGrade!: SubstitutionGrade | null;

  @Field(() => [String], { description: 'Why it does not serve; empty when it does.' })
  whyNot!: string[];

  @Field(() => [String], { description: 'What changes for the worse.' })
  worse!: string[];

  @Field(() => [String], { description: 'What must be checked again after the change.' })
  recheck!: string[];

  @Field(() => [String], {
    description: 'Ratings that it rests on and that no published source confirmed.',
  })
  unconfirmed!: string[];

  @Field(() => Int, { description: 'How many are on the shelf and not put aside.' })
  inStock!: number;

  @Field(() => MoneyAmount, {
    nullable: true,
    description: 'Price of one as last noted; null when none was noted.',
  })
  lastPrice!: MoneyAmount | null;

  @Field(() => Basis, { description: 'What was compared, and how.' })
  basis!: Basis;
}
