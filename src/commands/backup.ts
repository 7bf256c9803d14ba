import { existsSync } from 'node:fs';
import { rename, rm } from 'node:fs/promises';
import Sqlite from 'better-sqlite3';
import type { Command } from 'commander';
import { CommandFailure } from './commandFailure.js';
import { attachmentsOfFile } from '../config.js';
import { AttachmentStore } from '../features/attachments/attachmentStore.js';
import { copyFiles } from './copyFiles.js';
import { refuseExisting } from './refuseExisting.js';
import { sqlitePath } from './sqlitePath.js';
import type { Surroundings } from './surroundings.js';

export const addBackup = (program: Command, around: Surroundings): Command =>
  program
    .command('backup')
    .description('Copy the database file and the attachments, while Reglow may be running.')
    .argument('<file>', 'the copy')
    .option('--replace', 'overwrite what is there')
    .option('--no-attachments', 'copy the database alone')
    .action((file: string, options: { replace?: boolean; attachments?: boolean }) =>
      backup(around, file, options.replace ?? false, options.attachments ?? true),
    );

/** SQLite's online backup: consistent whatever is written meanwhile; checked before it counts. */
export async function backup(
  around: Surroundings,
  file: string,
  isReplaced: boolean,
  hasAttachments = true,
): Promise<void> {
  const path = sqlitePath(around.config);
  if (path === null) {
    throw new CommandFailure(
      'This collection is kept by PostgreSQL: back it up with pg_dump, or write an archive with `reglow export --archive file.json`.',
    );
  }
  if (!existsSync(path)) throw new CommandFailure(`There is no collection at ${path} to copy.`);
  refuseExisting(file, isReplaced);
  const part = `${file}.part`;
  await rm(part, { force: true });
  const connection = new Sqlite(path, { readonly: true, fileMustExist: true });
  try {
    await connection.backup(part);
  } finally {
    connection.close();
  }
  refuseUnsound(part);
  await rename(part, file);
  around.print(`Copied the collection into ${file}.`);
  const { attachmentsFolder } = around.config;
  if (!existsSync(attachmentsFolder)) return;
  if (!hasAttachments) {
    around.print(`The attachments in ${attachmentsFolder} were left out.`);
    return;
  }
  const folder = attachmentsOfFile(file);
  const { copied, known } = await copyFiles(file, new AttachmentStore(attachmentsFolder), folder);
  around.print(
    `Copied ${copied} attachments into ${folder}${known > 0 ? `; ${known} were there already` : ''}.`,
  );
}

function refuseUnsound(path: string): void {
  const copy = new Sqlite(path);
  // One file without companions: the copy is to be carried away as it is.
  copy.pragma('journal_mode = DELETE');
  const verdict: unknown = copy.pragma('integrity_check', { simple: true });
  copy.close();
  if (verdict !== 'ok') {
    throw new CommandFailure(`The copy ${path} is damaged: do not rely on it, and check the disk.`);
  }
}
