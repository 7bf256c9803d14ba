import { writeFileSync } from 'node:fs';
import { Option, type Command } from 'commander';
import { GraphQLError } from 'graphql';
import { contextOf } from '../api/serveApi.js';
import type { ApiContext } from '../api/kit/apiContext.js';
import { itemIdByNumber } from '../features/reports/itemIdByNumber.js';
import {
  hoursText,
  maintenanceText,
  progressText,
  sessionsText,
} from '../features/reports/reportTexts.js';
import { CommandFailure } from './commandFailure.js';
import { refuseExisting } from './refuseExisting.js';
import type { Surroundings } from './surroundings.js';
import { withExistingCollection } from './withCollection.js';

interface FileOptions {
  file?: string;
  replace?: boolean;
}

interface PeriodOptions extends FileOptions {
  from: string;
  to: string;
  item?: string;
}

/** `hours`, `calendar` and `report`: what leaves the collection as a text for others to read. */
export function addReports(program: Command, around: Surroundings): Command {
  inDays(intoFile(program.command('hours').description('Write work sessions as CSV.'))).action(
    (options: PeriodOptions) =>
      write(around, options, async (context) =>
        hoursText(context, await scopeOf(context, options)),
      ),
  );
  const calendar = program.command('calendar').description('Write an iCalendar file.');
  inDays(intoFile(calendar.command('sessions').description('Work sessions.'))).action(
    (options: PeriodOptions) =>
      write(around, options, async (context) =>
        sessionsText(context, await scopeOf(context, options)),
      ),
  );
  intoFile(
    calendar
      .command('maintenance')
      .description('The days on which final checks go stale and maintenance falls due.'),
  ).action((options: FileOptions) => write(around, options, maintenanceText));
  inDays(intoFile(program.command('report').description('Write what was done between two days.')))
    .addOption(
      new Option('--as <format>', 'how it is written')
        .choices(['markdown', 'html'])
        .default('markdown'),
    )
    .action((options: PeriodOptions & { as: string }) =>
      write(around, options, async (context) =>
        progressText(
          context,
          await scopeOf(context, options),
          options.as === 'html' ? 'HTML' : 'MARKDOWN',
        ),
      ),
    );
  return program;
}

const intoFile = (command: Command): Command =>
  command
    .option('--file <path>', 'write it there instead of to the terminal')
    .option('--replace', 'overwrite the file');

const inDays = (command: Command): Command =>
  command
    .requiredOption('--from <day>', 'first day, YYYY-MM-DD')
    .requiredOption('--to <day>', 'last day, included')
    .option('--item <number>', 'only this inventory number');

const scopeOf = async (context: ApiContext, { from, to, item }: PeriodOptions) => ({
  from,
  to,
  itemId: await itemIdByNumber(context.database.reader, item ?? null),
});

async function write(
  around: Surroundings,
  { file, replace = false }: FileOptions,
  textOf: (context: ApiContext) => Promise<string>,
): Promise<void> {
  if (file !== undefined) refuseExisting(file, replace);
  const text = await withExistingCollection(around, (database) =>
    textOf(contextOf(database, around.nowMs(), around.config.attachmentsFolder)),
  ).catch((error: unknown) => {
    throw error instanceof GraphQLError ? new CommandFailure(error.message) : error;
  });
  if (file === undefined) around.print(text.trimEnd());
  else {
    writeFileSync(file, text);
    around.say(`Wrote ${file}.`);
  }
}
