import { Field, ObjectType } from 'type-graphql';
import { describedEnum } from './describedEnum.js';

export const ProblemCode = describedEnum(
  'ProblemCode',
  'Why something was not done, in a word that stays the same.',
  {
    INVALID: 'Something in the input is wrong; `path` says where.',
    NOT_FOUND: 'What the input names is not there.',
    CONFLICT: 'It would contradict what is recorded.',
    OUT_OF_DATE: 'Somebody changed the record in between: load it again.',
  },
);
export type ProblemCode = keyof typeof ProblemCode;

@ObjectType({
  description: 'A reason why something was not done, that a person can mend.',
  simpleResolvers: true,
})
export class Problem {
  @Field(() => ProblemCode, { description: 'The sort of problem.' })
  code!: ProblemCode;

  @Field(() => String, { description: 'What is wrong and what to do, as a sentence.' })
  message!: string;

  @Field(() => [String], { description: 'Where in the input: field names and list positions.' })
  path!: string[];
}
