import { copyFile, mkdir, rename, stat } from 'node:fs/promises';
import { dirname } from 'node:path';
import Sqlite from 'better-sqlite3';
import { AttachmentStore } from '../features/attachments/attachmentStore.js';

/**
 * Copies the attachments that a copied database names, each once: content never changes under its
 * digest, so what is there in full need not be copied again. One that is missing is left for
 * `reglow verify` to name.
 */
export async function copyFiles(
  database: string,
  from: AttachmentStore,
  folder: string,
): Promise<{ copied: number; known: number }> {
  const to = new AttachmentStore(folder);
  const connection = new Sqlite(database, { readonly: true, fileMustExist: true });
  const files = connection
    .prepare('SELECT digest, byte_length AS byteLength FROM stored_file ORDER BY digest')
    .all() as { digest: string; byteLength: number }[];
  connection.close();
  let copied = 0;
  let known = 0;
  for (const { digest, byteLength } of files) {
    const path = to.pathOf(digest);
    if ((await lengthOf(path)) === byteLength) {
      known++;
      continue;
    }
    if ((await lengthOf(from.pathOf(digest))) === null) continue;
    await mkdir(dirname(path), { recursive: true });
    await copyFile(from.pathOf(digest), `${path}.part`);
    await rename(`${path}.part`, path);
    copied++;
  }
  return { copied, known };
}

const lengthOf = (path: string): Promise<number | null> =>
  stat(path).then(
    ({ size }) => size,
    () => null,
  );
