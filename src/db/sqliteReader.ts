import Sqlite from 'better-sqlite3';
import { addSqliteFunctions } from './addSqliteFunctions.js';
import { sqliteDialect } from './dialect.js';
import type { Reader, SqlValue } from './reader.js';

const mostPrepared = 1000;

/** A read-only connection in WAL mode: sees what is committed, never waits for the writer. */
export function sqliteReader(path: string): Reader {
  const connection = new Sqlite(path, { readonly: true, fileMustExist: true });
  addSqliteFunctions(connection);
  const prepared = new Map<string, Sqlite.Statement>();
  const statement = (sql: string): Sqlite.Statement => {
    const known = prepared.get(sql);
    if (known) return known;
    const fresh = connection.prepare(sql);
    // What is asked decides the select lists: however many there are, memory stays bounded.
    if (prepared.size >= mostPrepared) prepared.clear();
    prepared.set(sql, fresh);
    return fresh;
  };
  return {
    dialect: sqliteDialect,
    rows: <Row extends object>(sql: string, parameters: readonly SqlValue[] = []) =>
      new Promise<Row[]>((resolve) => {
        resolve(statement(sql).all(...parameters) as Row[]);
      }),
    close: () => {
      connection.close();
      return Promise.resolve();
    },
  };
}
