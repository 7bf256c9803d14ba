import type { SqlValue } from './reader.js';

/**
 * Runs one statement with `?` for parameters and gives plain rows: the reader's `rows`, or
 * `queryInWork` of a unit of work, for reads that serve both.
 */
export type Query = <Row extends object>(
  sql: string,
  parameters?: readonly SqlValue[],
) => Promise<Row[]>;
