import type { GraphQLResolveInfo } from 'graphql';
import { Arg, Args, Ctx, FieldResolver, Info, Mutation, Resolver, Root } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { carryOut } from '../../api/kit/carryOut.js';
import { loadedField } from '../../api/kit/loadRelations.js';
import { Node } from '../../api/kit/node.type.js';
import { PageArgs } from '../../api/kit/pageArgs.js';
import { payloadOf } from '../../api/kit/payloadOf.js';
import { Item } from '../items/item.type.js';
import { attachFile } from './attachFile.js';
import { AttachFileInput, ChangeAttachmentInput } from './attachment.inputs.js';
import { Attachment, AttachmentConnection } from './attachment.type.js';
import { changeAttachment } from './changeAttachment.js';
import { StoredFile } from './storedFile.type.js';

const asAttachment = { field: 'attachment', typeName: 'Attachment' };
const AttachFilePayload = payloadOf(
  'attachFile',
  'attachment',
  () => Attachment,
  'The attachment, or the one that was there already.',
);
const ChangeAttachmentPayload = payloadOf(
  'changeAttachment',
  'attachment',
  () => Attachment,
  'The attachment as it is now.',
);

@Resolver(() => Node)
export class AttachmentsOfRecordResolver {
  @FieldResolver(() => AttachmentConnection, {
    description: 'Photographs and papers shown with it, in their order.',
  })
  attachments(@Root() record: object, @Args() _page: PageArgs, @Info() info: GraphQLResolveInfo) {
    return loadedField(record, info);
  }
}

@Resolver(() => Item)
export class CoverPictureResolver {
  @FieldResolver(() => Attachment, {
    nullable: true,
    description:
      'The picture to know it by: its first OVERALL one, else its first; null if there is none.',
  })
  coverPicture(@Root() item: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(item, info);
  }
}

@Resolver(() => Attachment)
export class AttachmentResolver {
  @FieldResolver(() => StoredFile, { description: 'The file.' })
  file(@Root() attachment: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(attachment, info);
  }

  @FieldResolver(() => Node, { nullable: true, description: 'The record that it is shown with.' })
  subject(@Root() attachment: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(attachment, info);
  }

  @FieldResolver(() => Attachment, {
    nullable: true,
    description: 'What shows the same before the work; null if there is none.',
  })
  before(@Root() attachment: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(attachment, info);
  }

  @FieldResolver(() => [Attachment], { description: 'What shows the same after the work.' })
  afters(@Root() attachment: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(attachment, info);
  }

  @Mutation(() => AttachFilePayload, { description: 'Shows a stored file with a record.' })
  attachFile(
    @Arg('input', () => AttachFileInput, { description: 'File and record.' })
    input: AttachFileInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    const { reads } = context;
    return carryOut(context, info, asAttachment, (work) => attachFile(work, input, reads));
  }

  @Mutation(() => ChangeAttachmentPayload, {
    description: 'Changes what is said of an attachment, or takes it off the record.',
  })
  changeAttachment(
    @Arg('input', () => ChangeAttachmentInput, { description: 'The change.' })
    input: ChangeAttachmentInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asAttachment, (work) => changeAttachment(work, input));
  }
}
