import type { Reader } from '../../db/reader.js';
import type { AttachmentStore } from './attachmentStore.js';
import { fileDigest } from './fileDigest.js';

export interface FileFault {
  originalName: string;
  digest: string;
  path: string;
  fault: 'MISSING' | 'ALTERED' | 'UNREADABLE';
}

const filesAtOnce = 500;

/** Reads every kept file and compares it with its digest. @returns what is not as it was. */
export async function verifyFiles(
  reader: Reader,
  store: AttachmentStore,
  onFile: (done: number) => void = () => undefined,
): Promise<{ checked: number; faults: FileFault[] }> {
  const faults: FileFault[] = [];
  let checked = 0;
  for (let last = ''; ;) {
    const files = await reader.rows<{ digest: string; originalName: string }>(
      `SELECT digest AS "digest", original_name AS "originalName" FROM stored_file
       WHERE digest > ? ORDER BY digest LIMIT ?`,
      [last, filesAtOnce],
    );
    const lastFile = files.at(-1);
    if (lastFile === undefined) return { checked, faults };
    last = lastFile.digest;
    for (const { digest, originalName } of files) {
      const path = store.pathOf(digest);
      const fault = await faultOf(path, digest);
      if (fault !== null) faults.push({ originalName, digest, path, fault });
      onFile(++checked);
    }
  }
}

async function faultOf(path: string, digest: string): Promise<FileFault['fault'] | null> {
  try {
    return (await fileDigest(path)) === digest ? null : 'ALTERED';
  } catch (error) {
    return (error as { code?: string }).code === 'ENOENT' ? 'MISSING' : 'UNREADABLE';
  }
}
