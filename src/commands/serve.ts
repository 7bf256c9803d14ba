import type { Command } from 'commander';
import { pino } from 'pino';
import { serveApi } from '../api/serveApi.js';
import { packageFolder } from '../features/packageFolder.js';
import type { Database } from '../db/database.js';
import { CommandFailure } from './commandFailure.js';
import type { Surroundings } from './surroundings.js';
import { withCollection } from './withCollection.js';

export const addServe = (program: Command, around: Surroundings): Command =>
  program
    .command('serve')
    .description('Serve the collection over GraphQL until it is told to stop.')
    .action(() => serve(around));

/** Serves the collection until it is told to stop; then ends what is under way, and closes. */
export const serve = (around: Surroundings): Promise<void> =>
  withCollection(around, async (database) => {
    const running = await start(around, database);
    around.print(`Reglow is at ${running.url} (the API at ${running.url}/graphql)`);
    if (!around.config.isQuiet) {
      around.print(`It keeps the collection in ${shownPlace(around.config.databaseUrl)}`);
      around.print('To look around first, load the invented collection (in another terminal):');
      around.print('  npm run demo');
      around.print('To bring your own list (a dry run changes nothing):');
      around.print('  npm run reglow -- import rigs.csv --dry-run');
      around.print('Ctrl+C stops it.');
    }
    await around.untilStopped();
    around.say('Stopping …');
    await running.close();
  });

async function start(around: Surroundings, database: Database) {
  const { host, port, allowedHosts, attachmentsFolder } = around.config;
  const logger = pino({ base: null }, pino.destination(2));
  try {
    return await serveApi(database, {
      host,
      port,
      allowedHosts,
      pagesFolder: packageFolder('dist-web'),
      attachmentsFolder,
      clock: () => around.nowMs(),
      log: (id, error) => {
        logger.error({ id, err: error }, 'unexpected failure');
      },
    });
  } catch (error) {
    const { code } = error as { code?: string };
    if (code === 'EADDRINUSE') {
      throw new CommandFailure(
        `Port ${port} is taken, perhaps by a Reglow that runs already: stop that, or choose another, as in REGLOW_PORT=${port + 1}.`,
      );
    }
    if (code === 'EADDRNOTAVAIL' || code === 'ENOTFOUND') {
      throw new CommandFailure(`This machine has no address ${host}: check REGLOW_HOST.`);
    }
    if (code === 'EACCES') {
      throw new CommandFailure(`Port ${port} is not for you to open: choose one above 1023.`);
    }
    throw error;
  }
}

/** Where the collection is, without a password. */
function shownPlace(databaseUrl: string): string {
  if (databaseUrl.startsWith('sqlite:')) return databaseUrl.slice('sqlite:'.length);
  try {
    const url = new URL(databaseUrl);
    return `${url.host}${url.pathname}`;
  } catch {
    return 'the database of REGLOW_DATABASE';
  }
}
