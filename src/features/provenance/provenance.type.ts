import { Field, ObjectType } from 'type-graphql';
import { describedEnum } from '../../api/kit/describedEnum.js';

export const ContradictionCode = describedEnum(
  'ContradictionCode',
  'How the dates in a provenance contradict one another.',
  {
    BEFORE_FIRST_YEAR_MADE: 'It surely ended before the model was first made.',
    BEFORE_MAKING: 'It surely ended before the item itself was made.',
    TWO_HOLDERS: 'Two people would have held it at once.',
    CONFLICTING_DATES: 'Statements about its dates cannot all be true; the fewest such are named.',
  },
);
export type ContradictionCode = keyof typeof ContradictionCode;

@ObjectType({
  description: 'Where an item came from, and on what evidence.',
  simpleResolvers: true,
})
export class Provenance {}

@ObjectType({
  description: 'Something in a provenance that cannot be: at least one of its records is mistaken.',
  simpleResolvers: true,
})
export class Contradiction {
  @Field(() => ContradictionCode, { description: 'The sort of contradiction.' })
  code!: ContradictionCode;

  @Field(() => String, { description: 'What cannot be, in a sentence.' })
  message!: string;
}
