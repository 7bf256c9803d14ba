import type { Command } from 'commander';
import { redactHistory } from '../features/history/redactHistory.js';
import { reads } from '../features/reads.js';
import { actOfCommand } from './actOfCommand.js';
import { recordCalled } from './recordCalled.js';
import type { Surroundings } from './surroundings.js';
import { withExistingCollection } from './withCollection.js';

interface RedactOptions {
  field: string[];
  reason: string;
}

export const addRedact = (program: Command, around: Surroundings): Command =>
  program
    .command('redact')
    .description('Take what was written in some fields of a record out of the log, for good.')
    .argument('<record>', 'an inventory number, or the id of any record; it says otherwise already')
    .requiredOption('--field <names...>', 'the fields, as the history names them')
    .requiredOption('--reason <text>', 'why; it stays in the log')
    .action((record: string, options: RedactOptions) => redact(around, record, options));

export const redact = (
  around: Surroundings,
  record: string,
  { field, reason }: RedactOptions,
): Promise<void> =>
  withExistingCollection(around, async (database) => {
    const recordId = await recordCalled(database, record);
    const entries = await database.write(actOfCommand(around, 'redactHistory'), (work) =>
      redactHistory(work, { recordId, fields: field, reason }, reads),
    );
    around.print(
      `Took ${field.join(', ')} out of ${entries} ${entries === 1 ? 'entry' : 'entries'} of the log. It can still be verified.`,
    );
    around.print('Backups and archives made before still hold it: see to them as well.');
  });
