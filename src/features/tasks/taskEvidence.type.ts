import { Field, ObjectType } from 'type-graphql';
import { EvidenceKind } from './evidenceKind.js';

@ObjectType({
  description: 'What shows that the stated share of a task is done.',
  simpleResolvers: true,
})
export class TaskEvidence {
  @Field(() => EvidenceKind, { description: 'What sort of evidence it is.' })
  kind!: EvidenceKind;

  @Field(() => String, { nullable: true, description: 'The note; null if there is none.' })
  note!: string | null;
}
