import Sqlite from 'better-sqlite3';
import { addSqliteFunctions } from './addSqliteFunctions.js';
import { sqliteDialect } from './dialect.js';
import type { Reader, SqlValue } from './reader.js';

const mostPrepared = 1000;

interface Prepared {
  statement: Sqlite.Statement;
  /** Of its columns, in order. */
  names: readonly string[];
}

/** A read-only connection in WAL mode: sees what is committed, never waits for the writer. */
export function sqliteReader(path: string): Reader {
  const connection = new Sqlite(path, { readonly: true, fileMustExist: true });
  addSqliteFunctions(connection);
  const prepared = new Map<string, Prepared>();
  const prepare = (sql: string): Prepared => {
    const known = prepared.get(sql);
    if (known) return known;
    const statement = connection.prepare(sql).raw();
    const fresh = { statement, names: statement.columns().map(({ name }) => name) };
    // What is asked decides the select lists: however many there are, memory stays bounded.
    if (prepared.size >= mostPrepared) prepared.clear();
    prepared.set(sql, fresh);
    return fresh;
  };
  return {
    dialect: sqliteDialect,
    rows: <Row extends object>(sql: string, parameters: readonly SqlValue[] = []) =>
      new Promise<Row[]>((resolve) => {
        const { statement, names } = prepare(sql);
        resolve(
          statement.all(...parameters).map((values) => named(names, values as unknown[])) as Row[],
        );
      }),
    close: () => {
      connection.close();
      return Promise.resolve();
    },
  };
}

/**
 * One row under its columns' names. The rows that the driver makes by itself are hash tables: slower
 * to make, to read and to clear away than objects that share a shape.
 */
function named(names: readonly string[], values: readonly unknown[]): object {
  const row: Record<string, unknown> = {};
  for (let at = 0; at < names.length; at++) row[names[at] ?? ''] = values[at];
  return row;
}
