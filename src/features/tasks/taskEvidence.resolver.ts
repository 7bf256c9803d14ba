import type { GraphQLResolveInfo } from 'graphql';
import { FieldResolver, Info, Resolver, Root } from 'type-graphql';
import { loadedField } from '../../api/kit/loadRelations.js';
import { Attachment } from '../attachments/attachment.type.js';
import { Reading } from '../readings/reading.type.js';
import { Task } from './task.type.js';
import { TaskEvidence } from './taskEvidence.type.js';

@Resolver(() => Task)
export class EvidenceOfTaskResolver {
  @FieldResolver(() => TaskEvidence, {
    nullable: true,
    description: 'What shows the stated percentage; null if nothing does: then it earns nothing.',
  })
  evidence(@Root() task: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(task, info);
  }
}

@Resolver(() => TaskEvidence)
export class TaskEvidenceResolver {
  @FieldResolver(() => Reading, {
    nullable: true,
    description: 'The reading; null where none shows it.',
  })
  reading(@Root() evidence: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(evidence, info);
  }

  @FieldResolver(() => Attachment, {
    nullable: true,
    description: 'The photograph, with its caption; null where none shows it.',
  })
  photograph(@Root() evidence: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(evidence, info);
  }
}
