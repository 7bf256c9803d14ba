import { createWriteStream } from 'node:fs';
import { rename, rm } from 'node:fs/promises';
import { Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';

/** Writes a file under another name first, so that what bears its name is always whole. */
export async function writeWholeFile(path: string, text: AsyncIterable<string>): Promise<void> {
  const part = `${path}.part`;
  try {
    await pipeline(Readable.from(text), createWriteStream(part, { flush: true }));
    await rename(part, path);
  } catch (error) {
    await rm(part, { force: true });
    throw error;
  }
}
