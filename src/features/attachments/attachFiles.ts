import { createReadStream } from 'node:fs';
import { basename } from 'node:path';
import { globalId, splitGlobalId } from '../../api/kit/globalId.js';
import type { Reads } from '../../api/kit/typeReads.js';
import type { Act, Database } from '../../db/database.js';
import { Refusal } from '../../db/refusal.js';
import { attachFile } from './attachFile.js';
import type { AttachFileInput } from './attachment.inputs.js';
import type { AttachmentStore } from './attachmentStore.js';
import { fileDigest } from './fileDigest.js';
import { takeInFile } from './takeInFile.js';

export interface AttachedFiles {
  attached: number;
  /** Shown with this record already, by content. */
  known: number;
  refused: { path: string; why: string }[];
  isStopped: boolean;
}

/**
 * Shows many files with one record, one after the other, so that memory does not grow with their
 * number and what is done stays done when it is stopped. Run again, it goes on where it was.
 * @param act gives who and when, anew for each file
 */
export async function attachFiles(
  database: Database,
  store: AttachmentStore,
  files: readonly string[],
  link: Omit<AttachFileInput, 'fileId'>,
  {
    act,
    reads,
    isStopped,
    onFile,
  }: {
    act: () => Act;
    reads: Reads;
    isStopped: () => boolean;
    onFile: (done: number) => void;
  },
): Promise<AttachedFiles> {
  const outcome: AttachedFiles = { attached: 0, known: 0, refused: [], isStopped: false };
  const there = await digestsAt(database, link.toId);
  for (const [index, path] of files.entries()) {
    if (isStopped()) return { ...outcome, isStopped: true };
    const digest = await fileDigest(path);
    if (there.has(digest) && (await store.has(digest))) outcome.known++;
    else {
      const source = { bytes: createReadStream(path), name: basename(path) };
      try {
        await takeInFile(database, store, act(), source, (work, id) =>
          attachFile(work, { ...link, fileId: globalId('StoredFile', id) }, reads),
        );
        there.add(digest);
        outcome.attached++;
      } catch (error) {
        if (!(error instanceof Refusal)) throw error;
        outcome.refused.push({ path, why: error.message });
      }
    }
    onFile(index + 1);
  }
  return outcome;
}

async function digestsAt({ reader }: Database, toId: string): Promise<Set<string>> {
  const rows = await reader.rows<{ digest: string }>(
    `SELECT stored_file.digest AS "digest" FROM attachment
     JOIN stored_file ON stored_file.id = attachment.file_id
     WHERE attachment.subject_id = ? AND attachment.detached_at IS NULL`,
    [splitGlobalId(toId)?.id ?? ''],
  );
  return new Set(rows.map(({ digest }) => digest));
}
