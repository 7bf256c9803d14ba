import { Field, ID, InputType, Int } from 'type-graphql';
import { AttachmentRole } from './attachmentRole.js';

@InputType({ description: 'A stored file is shown with a record.' })
export class AttachFileInput {
  @Field(() => ID, { description: 'The file, as `POST /attachments` answered.' })
  fileId!: string;

  @Field(() => ID, {
    description: 'The record: a rig, accessory, finding, reading, component, task, session …',
  })
  toId!: string;

  @Field(() => AttachmentRole, {
    nullable: true,
    description: 'What it shows; left out: OVERALL for a picture, DOCUMENT for anything else.',
  })
  role?: AttachmentRole | null;

  @Field(() => String, { nullable: true, description: 'What is to be seen on it.' })
  caption?: string | null;

  @Field(() => ID, {
    nullable: true,
    description: 'The attachment that shows the same before the work.',
  })
  beforeId?: string | null;

  @Field(() => Int, {
    nullable: true,
    description: 'Place among the attachments of the record; left out: the last.',
  })
  ordinal?: number | null;
}

@InputType({ description: 'A change of an attachment; what is left out stays as it is.' })
export class ChangeAttachmentInput {
  @Field(() => ID, { description: 'The attachment.' })
  id!: string;

  @Field(() => Int, { description: 'The version that you saw.' })
  version!: number;

  @Field(() => AttachmentRole, { nullable: true, description: 'What it shows.' })
  role?: AttachmentRole | null;

  @Field(() => String, { nullable: true, description: 'What is to be seen; null for nothing.' })
  caption?: string | null;

  @Field(() => ID, { nullable: true, description: 'The picture from before; null for none.' })
  beforeId?: string | null;

  @Field(() => Int, { nullable: true, description: 'Place among the attachments.' })
  ordinal?: number | null;

  @Field(() => Boolean, {
    nullable: true,
    description: 'Take it off the record, or put it back; the file stays kept either way.',
  })
  isDetached?: boolean | null;
}
