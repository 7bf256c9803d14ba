import type { SqlValue } from '../../db/reader.js';

/** One condition of a list, with its parameters. */
export interface Condition {
  sql: string;
  parameters: SqlValue[];
}

/** Nothing when the filter leaves it open. */
export const equalTo = (expression: string, value: SqlValue | undefined): Condition[] =>
  value === null || value === undefined
    ? []
    : [{ sql: `${expression} = ?`, parameters: [sent(value)] }];

/** PostgreSQL refuses a text with a null character, which no kept text has. */
const sent = (value: string | number): string | number =>
  typeof value === 'string' ? value.replaceAll('\u0000', '') : value;

/** In use (false), out of use (true), or both (null). */
export const retiredIs = (table: string, isRetired: boolean | null | undefined): Condition[] =>
  isRetired === null
    ? []
    : [{ sql: `${table}.retired_at IS ${isRetired ? 'NOT NULL' : 'NULL'}`, parameters: [] }];
