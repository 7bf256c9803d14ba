import Sqlite from 'better-sqlite3';
import { addSqliteFunctions } from './addSqliteFunctions.js';
import { sqliteDialect } from './dialect.js';
import type { Reader, SqlValue } from './reader.js';

/** One read transaction on a connection of its own: in WAL mode it sees one state throughout. */
export async function sqliteSnapshot<Result>(
  path: string,
  fn: (reader: Reader) => Promise<Result>,
): Promise<Result> {
  const connection = new Sqlite(path, { readonly: true, fileMustExist: true });
  try {
    addSqliteFunctions(connection);
    connection.exec('BEGIN');
    // BEGIN alone fixes nothing: the state is that of the first read.
    connection.prepare('SELECT COUNT(*) FROM sqlite_master').get();
    return await fn({
      dialect: sqliteDialect,
      rows: <Row extends object>(sql: string, parameters: readonly SqlValue[] = []) =>
        new Promise<Row[]>((resolve) => {
          resolve(connection.prepare(sql).all(...parameters) as Row[]);
        }),
      close: () => Promise.resolve(),
    });
  } finally {
    connection.close();
  }
}
