import { writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import type { Command } from 'commander';
import { signHead } from '../features/history/signHead.js';
import { actOfCommand } from './actOfCommand.js';
import { CommandFailure } from './commandFailure.js';
import { ownerKey } from './ownerKey.js';
import { refuseExisting } from './refuseExisting.js';
import { sqlitePath } from './sqlitePath.js';
import type { Surroundings } from './surroundings.js';
import { withExistingCollection } from './withCollection.js';

interface SignOptions {
  key?: string;
  out?: string;
}

export const addSignHead = (program: Command, around: Surroundings): Command =>
  program
    .command('sign-head')
    .description(
      'Sign the log as it stands, so that others can see later that it was only added to.',
    )
    .option('--key <file>', "the owner's key; made when it is not there")
    .option('--out <file>', 'write the signed head into a file, for `verify --head`')
    .action((options: SignOptions) => signCollection(around, options));

export async function signCollection(
  around: Surroundings,
  { key, out }: SignOptions,
): Promise<void> {
  if (out !== undefined) refuseExisting(out, false);
  const collection = sqlitePath(around.config);
  if (key === undefined && collection === null) {
    throw new CommandFailure("Name the file of the owner's key with --key.");
  }
  await withExistingCollection(around, async (database) => {
    const path = key ?? join(dirname(collection ?? ''), 'reglow-owner-key.pem');
    const privateKey = await ownerKey(around, path);
    const act = actOfCommand(around, 'signHead');
    const head = await database.write(act, (work) => signHead(work, privateKey));
    around.print(`Signed the log up to entry ${head.sequence}: ${head.entryHash}`);
    if (out === undefined) return;
    await writeFile(out, `${JSON.stringify(head, null, 2)}\n`);
    around.print(`Wrote the signed head into ${out}. Give it to whoever is to check later.`);
  });
}
