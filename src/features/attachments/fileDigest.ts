import { createHash } from 'node:crypto';
import { createReadStream } from 'node:fs';

/** SHA-256 of a file's bytes, 64 hexadecimal digits, read a piece at a time. */
export async function fileDigest(path: string): Promise<string> {
  const hash = createHash('sha256');
  for await (const piece of createReadStream(path, { highWaterMark: 1024 * 1024 })) {
    hash.update(piece as Buffer);
  }
  return hash.digest('hex');
}
