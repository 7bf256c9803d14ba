import { createReadStream } from 'node:fs';
import { access } from 'node:fs/promises';
import type { Command } from 'commander';
import { loadArchive } from '../features/export/loadArchive.js';
import { actOfCommand } from './actOfCommand.js';
import { showProgress } from './showProgress.js';
import type { Surroundings } from './surroundings.js';
import { withCollection } from './withCollection.js';

export const addLoad = (program: Command, around: Surroundings): Command =>
  program
    .command('load')
    .description('Load a JSON archive into an empty collection.')
    .argument('<file>', 'archive as `export --archive` writes it')
    .action((file: string) => load(around, file));

export async function load(around: Surroundings, file: string): Promise<void> {
  await access(file);
  const progress = showProgress(around);
  await withCollection(around, async (database) => {
    try {
      const counts = await loadArchive(
        database,
        actOfCommand(around, 'loadArchive'),
        () => createReadStream(file),
        (rows) => {
          progress.at('Loading', rows, null);
        },
      );
      progress.end();
      const rows = [...counts.values()].reduce((sum, count) => sum + count, 0);
      around.print(`Loaded ${rows} records, ${counts.get('item') ?? 0} of them items.`);
    } finally {
      progress.end();
    }
  });
}
