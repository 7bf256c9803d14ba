import { GraphQLDateTimeISO } from 'graphql-scalars';
import { Field, Int, ObjectType } from 'type-graphql';
import { connectionOf } from '../../api/kit/connectionOf.js';
import { Node } from '../../api/kit/node.type.js';
import { AttachmentRole } from './attachmentRole.js';

@ObjectType({
  implements: Node,
  description: 'A photograph or paper shown with a record.',
  simpleResolvers: true,
})
export class Attachment extends Node {
  @Field(() => Int, { description: 'Counts changes; send it back with your change.' })
  version!: number;

  @Field(() => AttachmentRole, { description: 'What it is there to show.' })
  role!: AttachmentRole;

  @Field(() => String, { nullable: true, description: 'What is to be seen; null if not said.' })
  caption!: string | null;

  @Field(() => Int, { description: 'Place among the attachments of the record.' })
  ordinal!: number;

  @Field(() => GraphQLDateTimeISO, {
    nullable: true,
    description: 'When it was taken off the record; null while it is on it.',
  })
  detachedAt!: string | null;

  @Field(() => GraphQLDateTimeISO, { description: 'When it was attached.' })
  recordedAt!: string;
}

export const AttachmentConnection = connectionOf('Attachment', () => Attachment, 'attachments');
