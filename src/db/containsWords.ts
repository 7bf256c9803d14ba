import type { SqlValue } from './reader.js';

const mostWords = 8;

/**
 * A condition for short lists without a text index: every word typed occurs in one of the columns.
 * Capitals and small letters count as the same, on SQLite from A to Z only.
 */
export function containsWords(
  columns: readonly string[],
  typed: string,
): { sql: string; parameters: SqlValue[] }[] {
  const text = columns.map((column) => `LOWER(COALESCE(${column}, ''))`).join(` || ' ' || `);
  const words = typed
    .toLowerCase()
    .split(/[\s\0]+/)
    .filter(Boolean)
    .slice(0, mostWords);
  return words.map((word) => ({
    sql: `${text} LIKE ? ESCAPE '!'`,
    parameters: [`%${word.slice(0, 100).replace(/[!%_]/g, '!$&')}%`],
  }));
}
