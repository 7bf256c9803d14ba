import { Option, type Command } from 'commander';
import { homeCurrency } from '../features/import/homeCurrency.js';
import { importList, type ImportProgress } from '../features/import/importList.js';
import { latestDayAt } from '../features/import/latestDayAt.js';
import { listEncodings } from '../features/import/listEncoding.js';
import { listInFile } from '../features/import/listSource.js';
import { actOfCommand } from './actOfCommand.js';
import { CommandFailure } from './commandFailure.js';
import { readImportOptions, type WrittenOptions } from './readImportOptions.js';
import { showImport } from './showImport.js';
import { showProgress } from './showProgress.js';
import type { Surroundings } from './surroundings.js';
import { withCollection } from './withCollection.js';

const several = (value: string, before: string[]): string[] => [...before, value];

export const addImport = (program: Command, around: Surroundings): Command =>
  program
    .command('import')
    .description('Bring an existing list (CSV) into the collection: all of it or nothing.')
    .argument('<file>', 'the list, with a row of headings')
    .addOption(oneOf('--kind <kind>', 'what the list holds', ['rigs', 'accessories'], 'rigs'))
    .option('--dry-run', 'check everything and change nothing', false)
    .addOption(
      oneOf('--date-order <order>', 'how 03/04/1971 is meant', ['day-first', 'month-first']),
    )
    .addOption(oneOf('--decimal-mark <mark>', 'what 1.234 means', ['point', 'comma']))
    .addOption(oneOf('--delimiter <mark>', 'between the cells', ['comma', 'semicolon', 'tab']))
    .addOption(oneOf('--encoding <name>', 'how the bytes are read', [...listEncodings]))
    .option('--currency <code>', 'for prices without one in their row (ISO 4217)')
    .option('--role <role>', 'for accessories without one in their row, such as "speaker"')
    .option('--first-day', 'a price dated by year or month counts as of its first day', false)
    .option('--map <column=field>', 'what a column is, as in "Tag=inventory number"', several, [])
    .option('--ignore <column>', 'leave a column out', several, [])
    .action((file: string, options: WrittenOptions) => importFile(around, file, options));

function oneOf(flags: string, description: string, choices: string[], usual?: string): Option {
  const option = new Option(flags, description).choices(choices);
  return usual === undefined ? option : option.default(usual);
}

/** Brings in a list from a file. @throws CommandFailure when something in it has to be mended. */
export async function importFile(
  around: Surroundings,
  file: string,
  written: WrittenOptions,
): Promise<void> {
  const options = readImportOptions(written, latestDayAt(around.nowMs()));
  const source = await listInFile(file);
  const progress = showProgress(around);
  const words = { checking: 'Checking', loading: 'Loading' };
  const watch = ({ phase, rowsRead, share }: ImportProgress): void => {
    progress.at(words[phase], rowsRead, share);
  };
  const report = await withCollection(around, async (database) => {
    const { reader } = database;
    const currency =
      options.currency ?? (await homeCurrency((sql, parameters) => reader.rows(sql, parameters)));
    try {
      const act = actOfCommand(around, 'importList');
      return await importList(database, act, source, { ...options, currency }, watch);
    } finally {
      progress.end();
    }
  });
  showImport(around, report);
  if (report.problemCount > 0) {
    throw new CommandFailure(
      `Nothing was loaded: ${report.problemCount} ${report.problemCount === 1 ? 'problem has' : 'problems have'} to be mended first.`,
    );
  }
}
