import { foldedText } from './foldedText.js';
import type { SqlValue } from './reader.js';

const mostWords = 8;

/**
 * A condition for short lists without a text index: every word typed occurs in one of the columns.
 * Capitals and small letters count as the same, and accents do not count.
 */
export function containsWords(
  columns: readonly string[],
  typed: string,
): { sql: string; parameters: SqlValue[] }[] {
  const text = `folded_text(${columns.map((column) => `COALESCE(${column}, '')`).join(` || ' ' || `)})`;
  const words = foldedText(typed)
    .split(/[\s\0]+/)
    .filter(Boolean)
    .slice(0, mostWords);
  return words.map((word) => ({
    sql: `${text} LIKE ? ESCAPE '!'`,
    parameters: [`%${word.slice(0, 100).replace(/[!%_]/g, '!$&')}%`],
  }));
}
