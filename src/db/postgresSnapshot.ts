import pg from 'pg';
import { postgresDialect } from './dialect.js';
import { numberedParameters } from './numberedParameters.js';
import { exactTypes } from './postgresTypes.js';
import type { Reader, SqlValue } from './reader.js';

/** One read transaction on a connection of its own, which sees one state throughout. */
export async function postgresSnapshot<Result>(
  url: string,
  fn: (reader: Reader) => Promise<Result>,
): Promise<Result> {
  const client = new pg.Client({ connectionString: url, types: exactTypes });
  await client.connect();
  try {
    await client.query('BEGIN ISOLATION LEVEL REPEATABLE READ READ ONLY');
    // The state is that of the first statement after BEGIN.
    await client.query('SELECT 1');
    return await fn({
      dialect: postgresDialect,
      rows: async <Row extends object>(sql: string, parameters: readonly SqlValue[] = []) =>
        (await client.query(numberedParameters(sql), [...parameters])).rows as Row[],
      close: () => Promise.resolve(),
    });
  } finally {
    await client.end();
  }
}
