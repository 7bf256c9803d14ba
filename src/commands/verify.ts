import type { Command } from 'commander';
import type { Database } from '../db/database.js';
import { AttachmentStore } from '../features/attachments/attachmentStore.js';
import { verifyFiles, type FileFault } from '../features/attachments/verifyFiles.js';
import { verifyCollection } from '../features/history/verifyCollection.js';
import { CommandFailure } from './commandFailure.js';
import { readSignedHead } from './readSignedHead.js';
import { showProgress } from './showProgress.js';
import type { Surroundings } from './surroundings.js';
import { withExistingCollection } from './withCollection.js';

interface VerifyOptions {
  head?: string[];
}

const several = (value: string, before: string[] = []): string[] => [...before, value];

export const addVerify = (program: Command, around: Surroundings): Command =>
  program
    .command('verify')
    .description('Find what was altered: in the log, in the records, in photographs and papers.')
    .option('--head <file>', 'also hold the log against a signed head kept elsewhere', several)
    .action((options: VerifyOptions) => verify(around, options));

const faultWords: Record<FileFault['fault'], string> = {
  MISSING: 'is missing',
  ALTERED: 'is not what was kept: its bytes have changed',
  UNREADABLE: 'cannot be read',
};

/** @throws CommandFailure when anything is not as it was recorded */
export const verify = (around: Surroundings, { head = [] }: VerifyOptions = {}): Promise<void> =>
  withExistingCollection(around, async (database) => {
    const faults = [
      ...(await faultsOfHistory(around, database, head)),
      ...(await faultsOfFiles(around, database)),
    ];
    for (const fault of faults) around.print(fault);
    if (faults.length === 0) return;
    throw new CommandFailure(
      `${faults.length} ${faults.length === 1 ? 'thing is' : 'things are'} not as recorded. A backup shows how it was.`,
    );
  });

async function faultsOfHistory(
  around: Surroundings,
  database: Database,
  headFiles: readonly string[],
): Promise<string[]> {
  const printed = await Promise.all(headFiles.map(readSignedHead));
  const progress = showProgress(around, 'entries', 100_000);
  const { log, heads, recordsChecked, recordFaults } = await verifyCollection(
    database,
    printed,
    (done) => {
      progress.at('Checking', done, null);
    },
  ).finally(() => {
    progress.end();
  });
  around.print(
    `Checked ${log.checked} entries of the log, up to ${log.head.entryHash}, and ${recordsChecked} records against it.`,
  );
  if (heads.length > 0) around.print(`Held ${heads.length} signed heads against it.`);
  const { fault } = log;
  const where = fault?.sequence === null ? '' : ` at entry ${fault?.sequence ?? ''}`;
  return [
    ...(fault ? [`The log stops fitting${where}: ${fault.why}.`] : []),
    ...heads
      .filter(({ why }) => why !== null)
      .map(({ head, why }) => `The head signed at ${head.signedAt} does not fit: ${why ?? ''}.`),
    ...recordFaults.map(({ table, id, why }) => `${table.replaceAll('_', ' ')} ${id}: ${why}.`),
  ];
}

async function faultsOfFiles(around: Surroundings, { reader }: Database): Promise<string[]> {
  const store = new AttachmentStore(around.config.attachmentsFolder);
  const progress = showProgress(around, 'files', 1000);
  const { checked, faults } = await verifyFiles(reader, store, (done) => {
    progress.at('Reading', done, null);
  });
  progress.end();
  around.print(`Read ${checked} kept files.`);
  return faults.map(
    ({ originalName, path, fault }) => `${originalName} ${faultWords[fault]}: ${path}`,
  );
}
