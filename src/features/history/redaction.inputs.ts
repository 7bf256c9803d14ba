import { Field, ID, InputType } from 'type-graphql';

@InputType({ description: 'What is to be taken out of the history of a record.' })
export class RedactHistoryInput {
  @Field(() => ID, { description: 'The record; it must say something else already.' })
  recordId!: string;

  @Field(() => [String], { description: 'The fields, as `Change.changedFields` names them.' })
  fields!: string[];

  @Field(() => String, { description: 'Why; it stays in the history.' })
  reason!: string;
}
