import type Sqlite from 'better-sqlite3';
import { foldedText } from './foldedText.js';
import { naturalKey } from './naturalKey.js';

/** Gives a connection what a migration gives PostgreSQL: the functions that statements call. */
export function addSqliteFunctions(connection: Sqlite.Database): void {
  const add = (name: string, of: (text: string) => string): void => {
    connection.function(name, { deterministic: true }, (value: unknown) =>
      typeof value === 'string' ? of(value) : null,
    );
  };
  add('natural_key', naturalKey);
  add('folded_text', foldedText);
}
