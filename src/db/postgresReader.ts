import pg from 'pg';
import { postgresDialect } from './dialect.js';
import { exactTypes } from './postgresTypes.js';
import { numberedParameters } from './numberedParameters.js';
import type { Reader, SqlValue } from './reader.js';

/** Reads through a pool of its own, whose sessions are read-only. */
export function postgresReader(url: string): Reader {
  const pool = new pg.Pool({
    connectionString: url,
    max: 5,
    options: '-c default_transaction_read_only=on',
    types: exactTypes,
  });
  // Without a listener a dropped idle connection would end the process.
  pool.on('error', () => undefined);
  return {
    dialect: postgresDialect,
    rows: async <Row extends object>(sql: string, parameters: readonly SqlValue[] = []) =>
      (await pool.query(numberedParameters(sql), [...parameters])).rows as Row[],
    close: () => pool.end(),
  };
}
