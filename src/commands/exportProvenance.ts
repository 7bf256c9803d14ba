import { writeFileSync } from 'node:fs';
import { extname } from 'node:path';
import type { Command } from 'commander';
import { provForms, provTexts } from '../features/provExport/provText.js';
import { CommandFailure } from './commandFailure.js';
import { refuseExisting } from './refuseExisting.js';
import type { Surroundings } from './surroundings.js';
import { withExistingCollection } from './withCollection.js';

export const addProvenance = (program: Command, around: Surroundings): Command =>
  program
    .command('provenance')
    .description('Write the provenance of one item as W3C PROV: .json, .jsonld or .ttl.')
    .argument('<number>', 'inventory number of the item')
    .argument('<file>', 'file to write; its ending says how')
    .option('--replace', 'overwrite what is there')
    .action((number: string, file: string, { replace = false }: { replace?: boolean }) =>
      exportProvenance(around, number, file, replace),
    );

export async function exportProvenance(
  around: Surroundings,
  number: string,
  file: string,
  isReplaced: boolean,
): Promise<void> {
  const form = Object.entries(provForms).find(([ending]) => `.${ending}` === extname(file));
  if (!form) throw new CommandFailure('End the file name in .json, .jsonld or .ttl.');
  refuseExisting(file, isReplaced);
  await withExistingCollection(around, async ({ reader }) => {
    const [item] = await reader.rows<{ id: string }>(
      'SELECT id AS "id" FROM item WHERE inventory_number = ?',
      [number],
    );
    if (!item) throw new CommandFailure(`There is no item ${number}.`);
    const today = new Date(around.nowMs()).toISOString().slice(0, 10);
    const texts = await provTexts(reader, [item.id], form[1].format, today);
    writeFileSync(file, texts.get(item.id) ?? '');
    around.print(`Wrote the provenance of ${number} into ${file}.`);
  });
}
