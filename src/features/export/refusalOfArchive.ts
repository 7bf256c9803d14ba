// cspell:words PRIMARYKEY
import { Refusal } from '../../db/refusal.js';

const constraints: Record<string, string> = {
  SQLITE_CONSTRAINT_FOREIGNKEY: 'a row refers to a record that the archive does not have before it',
  '23503': 'a row refers to a record that the archive does not have before it',
  SQLITE_CONSTRAINT_PRIMARYKEY: 'two rows have the same id',
  SQLITE_CONSTRAINT_CHECK: 'a row contradicts itself',
  '23514': 'a row contradicts itself',
};

/** What an archive was refused for, as a sentence; other failures as they are. */
export function refusalOfArchive(error: unknown): unknown {
  if (error instanceof Refusal) return error;
  const { code, message } = error as { code?: string; message?: string };
  const why = constraints[code ?? ''];
  if (why !== undefined) {
    return Refusal.invalid(`This archive is not sound: ${why}. Nothing was loaded.`);
  }
  if (message?.startsWith('Parser ')) {
    return Refusal.invalid(
      'This file is cut short or garbled: it is not whole JSON. Nothing was loaded. Take another copy of the archive.',
    );
  }
  return error;
}
