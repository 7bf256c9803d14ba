import { Option, type Command } from 'commander';
import { AttachmentRole } from '../features/attachments/attachmentRole.js';
import { attachFiles, type AttachedFiles } from '../features/attachments/attachFiles.js';
import { AttachmentStore } from '../features/attachments/attachmentStore.js';
import { filesUnder } from '../features/attachments/filesUnder.js';
import { reads } from '../features/reads.js';
import { actOfCommand } from './actOfCommand.js';
import { CommandFailure } from './commandFailure.js';
import { recordCalled } from './recordCalled.js';
import { showProgress } from './showProgress.js';
import type { Surroundings } from './surroundings.js';
import { withExistingCollection } from './withCollection.js';

interface AttachOptions {
  to: string;
  role?: string;
  caption?: string;
}

export const addAttach = (program: Command, around: Surroundings): Command =>
  program
    .command('attach')
    .description('Keep photographs and papers, and show them with a record. May be interrupted.')
    .argument('<files...>', 'files, or folders of them')
    .requiredOption('--to <record>', 'an inventory number, or the id of any record')
    .addOption(
      new Option('--role <role>', 'what they show').choices(
        Object.keys(AttachmentRole).map((word) => word.toLowerCase()),
      ),
    )
    .option('--caption <text>', 'what is to be seen on them')
    .action((files: string[], options: AttachOptions) => attach(around, files, options));

const filesBetweenLines = 100;

export async function attach(
  around: Surroundings,
  paths: readonly string[],
  { to, role, caption }: AttachOptions,
): Promise<void> {
  const files = await filesUnder(paths);
  let isAskedToStop = false;
  void around.untilStopped().then(() => {
    isAskedToStop = true;
  });
  const progress = showProgress(around, 'files', filesBetweenLines);
  const outcome = await withExistingCollection(around, async (database) => {
    const toId = await recordCalled(database, to);
    const link = {
      toId,
      role: role === undefined ? null : (role.toUpperCase() as AttachmentRole),
      caption: caption ?? null,
    };
    const store = new AttachmentStore(around.config.attachmentsFolder);
    return attachFiles(database, store, files, link, {
      act: () => actOfCommand(around, 'attachFile'),
      reads,
      isStopped: () => isAskedToStop,
      onFile: (done) => {
        progress.at('Attaching', done, done / files.length);
      },
    });
  }).finally(() => {
    progress.end();
  });
  tell(around, files.length, outcome);
}

function tell({ print, say }: Surroundings, total: number, outcome: AttachedFiles): void {
  const { attached, known, refused, isStopped } = outcome;
  for (const { path, why } of refused) say(`${path}: ${why}`);
  const parts = [`Attached ${attached} of ${total} files`];
  if (known > 0) parts.push(`${known} were attached already`);
  if (refused.length > 0) parts.push(`${refused.length} refused`);
  print(`${parts.join('; ')}.`);
  if (isStopped) {
    throw new CommandFailure(
      'Stopped. What is attached stays; the same command goes on from here.',
    );
  }
  if (refused.length > 0) {
    throw new CommandFailure('Mend what was refused, and run the same command again.');
  }
}
