import type { AttachmentRole, ShownPictureFragment } from '../../gql/graphql.js';

/** What a photograph may show; papers have a role of their own. */
export const pictureRoles = [
  'OVERALL',
  'BEFORE',
  'AFTER',
  'DETAIL',
  'MARKING',
  'DOCUMENT',
] as const satisfies readonly AttachmentRole[];

export const isPictureRole = (value: string): value is AttachmentRole =>
  (pictureRoles as readonly string[]).includes(value);

/** What can be changed of a picture, each field as text. */
export const pictureFields = ({ caption, role, before }: ShownPictureFragment) => ({
  caption: caption ?? '',
  role: role as string,
  beforeId: before?.id ?? '',
});
