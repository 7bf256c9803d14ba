/**
 * An amount as people type it, with a point or a comma before the decimals, as the API takes it;
 * null for what is none. Thousands are not set apart: at a fair 1.250 may mean either.
 */
export function writtenAmount(typed: string): string | null {
  const parts = /^\s*(\d{1,9})(?:[.,](\d{1,3}))?\s*$/.exec(typed);
  if (!parts) return null;
  const [, whole = '', decimals] = parts;
  return decimals === undefined ? whole : `${whole}.${decimals}`;
}
