import { z } from 'zod';
import { Refusal } from '../db/refusal.js';
import type { AttachFileInput } from '../features/attachments/attachment.inputs.js';
import { AttachmentRole } from '../features/attachments/attachmentRole.js';

const shape = z.strictObject({
  name: z.string().default('unnamed'),
  to: z.string().optional(),
  role: z.enum(AttachmentRole).optional(),
  caption: z.string().optional(),
  before: z.string().optional(),
});

/** What the address of an upload says: the file's name, and what it is to be shown with. */
export function readUpload(query: unknown): {
  name: string;
  link: Omit<AttachFileInput, 'fileId'> | null;
} {
  const read = shape.safeParse(query);
  if (!read.success) {
    throw new Refusal(
      read.error.issues.map(({ message, path }) => ({
        code: 'INVALID' as const,
        message: `${message}. An upload takes name, to, role, caption and before, each once.`,
        path: path.map(String),
      })),
    );
  }
  const { name, to, role, caption, before } = read.data;
  if (to === undefined) return { name, link: null };
  return {
    name,
    link: {
      toId: to,
      role: role ?? null,
      caption: caption ?? null,
      beforeId: before ?? null,
    },
  };
}
