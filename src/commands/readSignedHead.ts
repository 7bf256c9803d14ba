import { readFile } from 'node:fs/promises';
import { z } from 'zod';
import type { SignedHead } from '../features/history/headStatement.js';
import { CommandFailure } from './commandFailure.js';

const shape = z.object({
  sequence: z.int().min(1),
  entryHash: z.string(),
  signedAt: z.string(),
  publicKey: z.string(),
  signature: z.string(),
});

/** A signed head from a file as `sign-head --out` writes it. */
export async function readSignedHead(path: string): Promise<SignedHead> {
  const text = await readFile(path, 'utf8');
  try {
    return shape.parse(JSON.parse(text));
  } catch {
    throw new CommandFailure(`${path} is no signed head as \`sign-head --out\` writes it.`);
  }
}
