import { pathToFileURL } from 'node:url';
import { PreparationFailed } from './PreparationFailed.mjs';
import { endWithStarter } from './endWithStarter.mjs';
import { prepare, prepareProgram } from './prepare.mjs';
import { thisProject } from './projectPaths.mjs';
import { say } from './say.mjs';

/**
 * Prepares this clone and then becomes `node dist/src/main.js ...args`: in this very process, so
 * that signals, exit code and standard streams are the program's own and nothing stands between.
 * @param {string[]} args `--only-prepare` stops after preparing
 */
export async function runCommand(args) {
  endWithStarter();
  try {
    await (args[0] === 'schema' ? prepareProgram : prepare)(thisProject);
  } catch (error) {
    if (!(error instanceof PreparationFailed)) throw error;
    say(error.message);
    process.exitCode = 1;
    return;
  }
  if (args[0] === '--only-prepare') return;
  process.argv = [process.execPath, thisProject.main, ...args];
  process.setSourceMapsEnabled(true);
  await import(pathToFileURL(thisProject.main).href);
}
