import { homedir } from 'node:os';
import { extname, join } from 'node:path';
import { CommandFailure } from './commands/commandFailure.js';

/** What a person can set, from the environment; the command line overrides it. */
export interface Config {
  /** `sqlite:/path/to/file.sqlite` or `postgres://…`. */
  databaseUrl: string;
  /** Folder in which photographs and papers are kept. */
  attachmentsFolder: string;
  host: string;
  port: number;
  /** Host names beside the loopback's under which the server may be asked. */
  allowedHosts: string[];
  isQuiet: boolean;
}

/**
 * Reads the environment: `REGLOW_DATA` (folder), `REGLOW_DATABASE` (URL), `REGLOW_ATTACHMENTS`
 * (folder), `REGLOW_HOST`, `REGLOW_PORT`, `REGLOW_ALLOWED_HOSTS` (comma-separated).
 * @throws CommandFailure with what to mend when a setting cannot be read.
 */
export function readConfig(environment: NodeJS.ProcessEnv): Config {
  const folder = environment['REGLOW_DATA'] ?? dataFolder(environment);
  const port = Number(environment['REGLOW_PORT'] ?? 4600);
  if (!Number.isInteger(port) || port < 0 || port > 65_535) {
    throw new CommandFailure(
      `REGLOW_PORT must be a port from 0 to 65535, not "${environment['REGLOW_PORT'] ?? ''}".`,
    );
  }
  const databaseUrl = environment['REGLOW_DATABASE'] ?? `sqlite:${join(folder, 'reglow.sqlite')}`;
  if (!/^(sqlite:.|postgres(ql)?:\/\/)/.test(databaseUrl)) {
    throw new CommandFailure(
      'REGLOW_DATABASE must begin with sqlite: and a file, or with postgres:// and a server.',
    );
  }
  return {
    databaseUrl,
    attachmentsFolder: environment['REGLOW_ATTACHMENTS'] ?? attachmentsBeside(databaseUrl, folder),
    host: environment['REGLOW_HOST'] ?? '127.0.0.1',
    port,
    allowedHosts: (environment['REGLOW_ALLOWED_HOSTS'] ?? '').split(',').filter(Boolean),
    isQuiet: environment['REGLOW_QUIET'] === '1',
  };
}

/** Beside the database's file and named after it: what belongs together is carried together. */
function attachmentsBeside(databaseUrl: string, folder: string): string {
  if (!databaseUrl.startsWith('sqlite:')) return join(folder, 'attachments');
  return attachmentsOfFile(databaseUrl.slice('sqlite:'.length));
}

/** The folder of attachments that goes with a database file. */
export const attachmentsOfFile = (path: string): string =>
  `${path.slice(0, path.length - extname(path).length)}-attachments`;

/** Where programs keep a user's data on this system. */
function dataFolder(environment: NodeJS.ProcessEnv): string {
  if (process.platform === 'win32' && environment['APPDATA']) {
    return join(environment['APPDATA'], 'reglow');
  }
  if (process.platform === 'darwin') {
    return join(homedir(), 'Library', 'Application Support', 'reglow');
  }
  return join(environment['XDG_DATA_HOME'] ?? join(homedir(), '.local', 'share'), 'reglow');
}
