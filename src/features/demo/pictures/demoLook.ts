import { z } from 'zod';
import { AttachmentRole } from '../../attachments/attachmentRole.js';

const colour = z.string().regex(/^#[0-9a-f]{6}$/);

/** What a drawn thing looks like; all of it is invented. */
export const demoLook = z.strictObject({
  shape: z.enum(['SET', 'SUPPLY', 'SPEAKER', 'MICROPHONE', 'KEY', 'COUPLER', 'HEADPHONES']),
  role: z.enum(AttachmentRole).default('OVERALL'),
  caption: z.string().min(1),
  cabinet: colour,
  panel: colour,
  dial: z.enum(['ROUND', 'FAN', 'SLOT', 'NONE']).default('NONE'),
  knobs: z.int().min(0).max(9).default(0),
  hasMeter: z.boolean().default(false),
  /** Story time at which the camera says that it took it: 2025-03-14 19:30. */
  takenAt: z.string().optional(),
  /** Dust and rust, 0 to 1. */
  grime: z.number().min(0).max(1).default(0),
});
export type DemoLook = z.infer<typeof demoLook>;

/** A length as it is written into a drawing: short, and the same on every machine. */
export const px = (value: number): string => String(Math.round(value * 10) / 10);
