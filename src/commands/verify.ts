import type { Command } from 'commander';
import { AttachmentStore } from '../features/attachments/attachmentStore.js';
import { verifyFiles, type FileFault } from '../features/attachments/verifyFiles.js';
import { CommandFailure } from './commandFailure.js';
import { showProgress } from './showProgress.js';
import type { Surroundings } from './surroundings.js';
import { withExistingCollection } from './withCollection.js';

export const addVerify = (program: Command, around: Surroundings): Command =>
  program
    .command('verify')
    .description('Find photographs and papers that are missing or not as they were.')
    .action(() => verify(around));

const faultWords: Record<FileFault['fault'], string> = {
  MISSING: 'is missing',
  ALTERED: 'is not what was kept: its bytes have changed',
  UNREADABLE: 'cannot be read',
};

/** @throws CommandFailure when anything is not as it was recorded */
export const verify = (around: Surroundings): Promise<void> =>
  withExistingCollection(around, async ({ reader }) => {
    const store = new AttachmentStore(around.config.attachmentsFolder);
    const progress = showProgress(around, 'files', 1000);
    const { checked, faults } = await verifyFiles(reader, store, (done) => {
      progress.at('Reading', done, null);
    });
    progress.end();
    for (const { originalName, path, fault } of faults) {
      around.print(`${originalName} ${faultWords[fault]}: ${path}`);
    }
    around.print(`Read ${checked} kept files.`);
    if (faults.length > 0) {
      throw new CommandFailure(
        `${faults.length} of the kept files ${faults.length === 1 ? 'is' : 'are'} not as kept: put them back from a backup.`,
      );
    }
  });
