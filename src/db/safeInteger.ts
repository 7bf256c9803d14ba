import type { ValueTransformer } from 'typeorm';

/**
 * Whole numbers in 64-bit columns: PostgreSQL hands them over as text, SQLite as numbers.
 * @throws RangeError beyond 2^53 − 1, where a JavaScript number would lose digits in silence.
 */
export const safeInteger: ValueTransformer = {
  from: (stored: string | number | null): number | null =>
    stored === null ? null : asSafe(Number(stored)),
  to: (value: number | null | undefined): number | null | undefined =>
    value === null || value === undefined ? value : asSafe(value),
};

function asSafe(value: number): number {
  if (!Number.isSafeInteger(value)) throw new RangeError(`not an exact whole number: ${value}`);
  return value;
}
