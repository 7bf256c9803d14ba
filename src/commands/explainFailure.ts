// cspell:words NOTADB CANTOPEN
import { Refusal } from '../db/refusal.js';
import { CommandFailure } from './commandFailure.js';

const sentences: Readonly<Record<string, string>> = {
  ENOENT: 'There is no such file or folder',
  EACCES: 'This may not be read or written by you',
  EPERM: 'This may not be read or written by you',
  EISDIR: 'This is a folder and not a file',
  ENOTDIR: 'This is not a folder',
  ENOSPC: 'The disk is full',
  EROFS: 'This disk cannot be written to',
  ECONNREFUSED: 'No database server answers; start it, or check REGLOW_DATABASE',
  ENOTFOUND: 'There is no database server of this name; check REGLOW_DATABASE',
  SQLITE_NOTADB:
    'The database file is not a Reglow collection; check REGLOW_DATABASE and REGLOW_DATA',
  SQLITE_CANTOPEN: 'The database file cannot be opened; check REGLOW_DATABASE and REGLOW_DATA',
  SQLITE_BUSY: 'Another Reglow is writing to this collection; try again when it has ended',
  '28P01': 'The database server refuses this user or password; check REGLOW_DATABASE',
  '3D000': 'The database server has no database of this name; create it, or check REGLOW_DATABASE',
};

/** A failure as one sentence for the person at the terminal. */
export function explainFailure(error: unknown): string {
  if (error instanceof CommandFailure || error instanceof Refusal) return error.message;
  const {
    code,
    path,
    message = String(error),
  } = error as {
    code?: string;
    path?: string;
    message?: string;
  };
  const sentence = sentences[code ?? ''];
  if (sentence !== undefined) return path === undefined ? `${sentence}.` : `${sentence}: ${path}`;
  const [first = message] = message.split('\n');
  return `${first} (REGLOW_DEBUG=1 shows where this came from.)`;
}
