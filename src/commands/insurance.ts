import { writeFile } from 'node:fs/promises';
import { extname } from 'node:path';
import type { Command } from 'commander';
import { GraphQLError } from 'graphql';
import { contextOf } from '../api/serveApi.js';
import { writeSchedule } from '../features/insurance/writeSchedule.js';
import { CommandFailure } from './commandFailure.js';
import { refuseExisting } from './refuseExisting.js';
import type { Surroundings } from './surroundings.js';
import { withExistingCollection } from './withCollection.js';

interface InsuranceOptions {
  out: string;
  items?: string[];
  place?: string;
  replace?: boolean;
}

export const addInsurance = (program: Command, around: Surroundings): Command =>
  program
    .command('insurance')
    .description('Write the insurance schedule of the collection, or of a part of it.')
    .requiredOption('--out <file>', 'a file that ends in .pdf or .csv')
    .option('--items <numbers...>', 'only these inventory numbers')
    .option('--place <name>', 'only what stands in this place, or within it')
    .option('--replace', 'overwrite what is there')
    .action((options: InsuranceOptions) => insurance(around, options));

export async function insurance(around: Surroundings, options: InsuranceOptions): Promise<void> {
  const { out, items = null, place = null, replace = false } = options;
  const ending = extname(out).toLowerCase();
  if (ending !== '.pdf' && ending !== '.csv') {
    throw new CommandFailure('Name a file that ends in .pdf or .csv.');
  }
  refuseExisting(out, replace);
  await withExistingCollection(around, async (database) => {
    const context = contextOf(database, around.nowMs(), around.config.attachmentsFolder);
    const of = { numbers: items, placeName: place };
    const format = ending === '.pdf' ? 'pdf' : 'csv';
    const bytes = await writeSchedule(context, of, format).catch((error: unknown) => {
      throw error instanceof GraphQLError ? new CommandFailure(error.message) : error;
    });
    await writeFile(out, bytes);
    around.print(`Wrote the insurance schedule into ${out}.`);
  });
}
