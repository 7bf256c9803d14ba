import { rm } from 'node:fs/promises';
import type { Readable } from 'node:stream';
import type { Act, Database } from '../../db/database.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import type { AttachmentStore } from './attachmentStore.js';
import { describeFile, type DescribedFile } from './describeFile.js';
import { keepFile } from './keepFile.js';

/**
 * Takes a file in: its bytes into the store, then its description into the records, with whatever
 * is to follow in the same unit of work.
 * @throws Refusal when it is empty, too large or a picture that cannot be read; nothing is kept then
 */
export async function takeInFile<Result>(
  database: Database,
  store: AttachmentStore,
  act: Act,
  { bytes, name }: { bytes: Readable; name: string },
  fn: (work: UnitOfWork, fileId: string) => Promise<Result>,
): Promise<{ file: DescribedFile; fileId: string; result: Result }> {
  const received = await store.receive(bytes);
  try {
    const file = await describeFile(received, name);
    return await database.write(act, async (work) => {
      const fileId = await keepFile(work, file);
      return { file, fileId, result: await fn(work, fileId) };
    });
  } catch (error) {
    await forget(database, received.digest, received.path);
    throw error;
  }
}

/** What no record names need not be kept; what one does stays. */
async function forget({ reader }: Database, digest: string, path: string): Promise<void> {
  const known = await reader.rows('SELECT id FROM stored_file WHERE digest = ?', [digest]);
  if (known.length === 0) await rm(path, { force: true });
}
