import { existsSync } from 'node:fs';
import { rename, rm } from 'node:fs/promises';
import Sqlite from 'better-sqlite3';
import type { Command } from 'commander';
import { CommandFailure } from './commandFailure.js';
import { refuseExisting } from './refuseExisting.js';
import { sqlitePath } from './sqlitePath.js';
import type { Surroundings } from './surroundings.js';

export const addBackup = (program: Command, around: Surroundings): Command =>
  program
    .command('backup')
    .description('Copy the database file, whole, while Reglow may be running.')
    .argument('<file>', 'the copy')
    .option('--replace', 'overwrite what is there')
    .action((file: string, { replace = false }: { replace?: boolean }) =>
      backup(around, file, replace),
    );

/** SQLite's online backup: consistent whatever is written meanwhile; checked before it counts. */
export async function backup(
  around: Surroundings,
  file: string,
  isReplaced: boolean,
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
