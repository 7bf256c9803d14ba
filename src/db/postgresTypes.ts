import pg from 'pg';

const int8 = 20;
const numeric = 1700;

/** How values come over the wire: as `pg` has them, but 64-bit counts and sums as numbers. */
export const exactTypes: pg.CustomTypesConfig = {
  getTypeParser: (oid: number, format?: 'text' | 'binary'): unknown =>
    oid === int8 || oid === numeric ? exactNumber : pg.types.getTypeParser(oid, format),
};

/** PostgreSQL sends 64-bit counts and sums as text. @throws RangeError beyond 2^53 − 1. */
function exactNumber(text: string): number {
  const value = Number(text);
  if (Math.abs(value) > Number.MAX_SAFE_INTEGER) throw new RangeError(`too large: ${text}`);
  return value;
}
