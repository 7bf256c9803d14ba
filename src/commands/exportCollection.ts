import { existsSync } from 'node:fs';
import { mkdir, readdir } from 'node:fs/promises';
import type { Command } from 'commander';
import { exportArchive } from '../features/export/exportArchive.js';
import { exportFolder } from '../features/export/exportFolder.js';
import { CommandFailure } from './commandFailure.js';
import { refuseExisting } from './refuseExisting.js';
import type { Surroundings } from './surroundings.js';
import { withExistingCollection } from './withCollection.js';

interface ExportOptions {
  archive?: string;
  replace?: boolean;
}

export const addExport = (program: Command, around: Surroundings): Command =>
  program
    .command('export')
    .description('Write everything out: as CSV files into a folder, or as one JSON archive.')
    .argument('[folder]', 'folder for the CSV files')
    .option('--archive <file>', 'write one JSON archive, which `load` reads back')
    .option('--replace', 'overwrite what is there')
    .action((folder: string | undefined, options: ExportOptions) =>
      exportCollection(around, folder ?? null, options),
    );

export async function exportCollection(
  around: Surroundings,
  folder: string | null,
  { archive, replace = false }: ExportOptions,
): Promise<void> {
  if (archive === undefined && folder === null) {
    throw new CommandFailure('Name a folder for the CSV files, or a file with --archive.');
  }
  if (archive !== undefined) refuseExisting(archive, replace);
  await withExistingCollection(around, async (database) => {
    if (folder !== null) await prepareFolder(folder, replace);
    if (archive !== undefined) {
      await exportArchive(database, archive, new Date(around.nowMs()).toISOString());
      around.print(`Wrote the whole collection into ${archive}.`);
      if (existsSync(around.config.attachmentsFolder)) {
        around.print(
          `It names the attachments by digest; their bytes are in ${around.config.attachmentsFolder}: copy that folder too.`,
        );
      }
    }
    if (folder !== null) {
      const files = await exportFolder(database, folder);
      around.print(`Wrote ${files.length} CSV files into ${folder}.`);
    }
  });
}

async function prepareFolder(folder: string, isReplaced: boolean): Promise<void> {
  await mkdir(folder, { recursive: true });
  if (!isReplaced && (await readdir(folder)).length > 0) {
    throw new CommandFailure(`${folder} is not empty: choose another folder, or add --replace.`);
  }
}
