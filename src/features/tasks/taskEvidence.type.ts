import { Field, ObjectType } from 'type-graphql';
import { ProgressEvidenceKind } from './progressEvidenceKind.js';

@ObjectType({
  description: 'What shows that the stated share of a task is done.',
  simpleResolvers: true,
})
export class TaskEvidence {
  @Field(() => ProgressEvidenceKind, { description: 'What sort of evidence it is.' })
  kind!: ProgressEvidenceKind;

  @Field(() => String, { nullable: true, description: 'The note; null if there is none.' })
  note!: string | null;
}
