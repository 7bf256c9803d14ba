import { createHash, randomUUID } from 'node:crypto';
import { createWriteStream } from 'node:fs';
import { mkdir, open, rename, rm, stat } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import type { Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import { Refusal } from '../../db/refusal.js';

/** 100 MiB: a scan of a service manual fits, a film does not. */
export const largestFileBytes = 100 * 1024 * 1024;

/** A file whose bytes have arrived and lie under their digest. */
export interface ReceivedFile {
  /** SHA-256, 64 hexadecimal digits. */
  digest: string;
  byteLength: number;
  path: string;
}

/** Where the bytes of attachments lie: `ab/abcd….`, each once, under the digest of its content. */
export class AttachmentStore {
  constructor(readonly folder: string) {}

  pathOf(digest: string): string {
    return join(this.folder, digest.slice(0, 2), digest);
  }

  has(digest: string): Promise<boolean> {
    return stat(this.pathOf(digest)).then(
      () => true,
      () => false,
    );
  }

  /** Where a smaller copy is kept once it has been made; can be thrown away at any time. */
  derivedPathOf(digest: string, name: string): string {
    return join(this.folder, 'derived', digest.slice(0, 2), `${digest}-${name}`);
  }

  /**
   * Takes bytes in as they come, without holding more than a piece of them, and keeps them under
   * their digest. They are on the disk when this returns.
   * @throws Refusal when there are none, or more than fit
   */
  async receive(bytes: Readable, largest = largestFileBytes): Promise<ReceivedFile> {
    const incoming = join(this.folder, 'incoming');
    await mkdir(incoming, { recursive: true });
    const part = join(incoming, randomUUID());
    const hash = createHash('sha256');
    let byteLength = 0;
    try {
      await pipeline(
        bytes,
        async function* (pieces: AsyncIterable<Buffer>) {
          for await (const piece of pieces) {
            byteLength += piece.length;
            if (byteLength > largest) throw tooLarge(largest);
            hash.update(piece);
            yield piece;
          }
        },
        createWriteStream(part, { flush: true }),
      );
      if (byteLength === 0) throw Refusal.invalid('The file is empty. Choose another.', ['file']);
      const digest = hash.digest('hex');
      const path = this.pathOf(digest);
      // Also over what is there already: these bytes are right, those may have been altered.
      await moveInto(part, path);
      return { digest, byteLength, path };
    } finally {
      await rm(part, { force: true });
    }
  }
}

/** The name must outlive a power cut as the bytes do: the folder is written through as well. */
async function moveInto(part: string, path: string): Promise<void> {
  const folder = dirname(path);
  await mkdir(folder, { recursive: true });
  await rename(part, path);
  // Windows opens no folders.
  const handle = await open(folder).catch(() => null);
  await handle?.sync().catch(() => undefined);
  await handle?.close();
}

const tooLarge = (largest: number): Refusal =>
  Refusal.invalid(
    `The file is larger than ${Math.floor(largest / 1024 / 1024)} MB, the most that is kept. Make it smaller, or divide it.`,
    ['file'],
  );
