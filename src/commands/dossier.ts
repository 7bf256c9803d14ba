import { extname } from 'node:path';
import { writeFile } from 'node:fs/promises';
import { Option, type Command } from 'commander';
import { AttachmentStore } from '../features/attachments/attachmentStore.js';
import {
  DossierPaper,
  DossierReader,
  DossierWithheld,
  usuallyWithheld,
} from '../features/dossier/dossierReader.js';
import { writeDossier } from '../features/dossier/writeDossier.js';
import { CommandFailure } from './commandFailure.js';
import { refuseExisting } from './refuseExisting.js';
import type { Surroundings } from './surroundings.js';
import { withExistingCollection } from './withCollection.js';

interface DossierOptions {
  for: string;
  paper: string;
  withhold?: string[];
  withholdNothing?: boolean;
  sheet?: boolean;
  out: string;
  replace?: boolean;
}

const lowered = (words: object): string[] => Object.keys(words).map((word) => word.toLowerCase());

export const addDossier = (program: Command, around: Surroundings): Command =>
  program
    .command('dossier')
    .description('Write down all that is known of an item, for one reader.')
    .argument('<number>', 'its inventory number')
    .addOption(
      new Option('--for <reader>', 'who is to read it')
        .choices(lowered(DossierReader))
        .default('buyer'),
    )
    .addOption(
      new Option('--paper <paper>', 'of a PDF').choices(lowered(DossierPaper)).default('a4'),
    )
    .addOption(
      new Option('--withhold <parts...>', 'leave these out instead of the usual').choices(
        lowered(DossierWithheld),
      ),
    )
    .option('--withhold-nothing', 'leave nothing out')
    .option('--sheet', 'only the Object ID sheet with photographs, as after a theft')
    .requiredOption('--out <file>', 'a file that ends in .pdf or .html')
    .option('--replace', 'overwrite what is there')
    .action((number: string, options: DossierOptions) => dossier(around, number, options));

export async function dossier(
  around: Surroundings,
  number: string,
  options: DossierOptions,
): Promise<void> {
  const { out, replace = false } = options;
  const format = { '.pdf': 'PDF', '.html': 'HTML' }[extname(out).toLowerCase()] as
    'PDF' | 'HTML' | undefined;
  if (format === undefined) throw new CommandFailure('Name a file that ends in .pdf or .html.');
  refuseExisting(out, replace);
  const reader = options.for.toUpperCase() as DossierReader;
  const chosen = options.withhold?.map((word) => word.toUpperCase() as DossierWithheld);
  const withheld = options.withholdNothing ? [] : (chosen ?? usuallyWithheld[reader]);
  await withExistingCollection(around, async (database) => {
    const [item] = await database.reader.rows<{ id: string }>(
      'SELECT id AS "id" FROM item WHERE inventory_number = ?',
      [number.trim()],
    );
    if (!item) throw new CommandFailure(`There is no item with the number ${number}.`);
    const bytes = await writeDossier(
      database,
      new AttachmentStore(around.config.attachmentsFolder),
      item.id,
      {
        reader,
        extent: options.sheet ? 'SHEET' : 'DOSSIER',
        withheld: new Set(withheld),
        statedOn: new Date(around.nowMs()).toISOString().slice(0, 10),
      },
      { format, paper: options.paper.toUpperCase() as DossierPaper },
    );
    if (bytes === null) throw new CommandFailure(`The item ${number} has just been taken away.`);
    await writeFile(out, bytes);
    around.print(`Wrote the dossier of ${number} for the ${options.for} into ${out}.`);
  });
}
