import type { Dialect } from './dialect.js';

export type SqlValue = string | number | null;

/** Reads plain rows with bound parameters. Never writes: SQLite's connection is read-only. */
export interface Reader {
  dialect: Dialect;
  /** @param sql with `?` for each parameter, in order. */
  rows<Row extends object>(sql: string, parameters?: readonly SqlValue[]): Promise<Row[]>;
  close(): Promise<void>;
}
