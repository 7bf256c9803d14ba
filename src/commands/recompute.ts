import type { Command } from 'commander';
import { rebuildComputed } from '../features/rebuildComputed.js';
import { actOfCommand } from './actOfCommand.js';
import type { Surroundings } from './surroundings.js';
import { withExistingCollection } from './withCollection.js';

export const addRecompute = (program: Command, around: Surroundings): Command =>
  program
    .command('recompute')
    .description('Compute anew, from the records, how every item stands and is found.')
    .action(() => recompute(around));

export const recompute = (around: Surroundings): Promise<void> =>
  withExistingCollection(around, async (database) => {
    const count = await database.write(actOfCommand(around, 'recompute'), rebuildComputed);
    around.print(`Computed anew how ${count} items stand.`);
  });
