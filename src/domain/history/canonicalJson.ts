/**
 * One value, one text: JSON with sorted names and no blanks, so that its hash is the same wherever
 * it is computed. What JSON leaves out (undefined) is left out here too.
 * Source: RFC 8785, JSON Canonicalization Scheme, section 3.2.
 */
export function canonicalJson(value: unknown): string {
  if (typeof value !== 'object' || value === null) return JSON.stringify(value ?? null);
  if (Array.isArray(value)) return `[${value.map(canonicalJson).join(',')}]`;
  if (value instanceof Date) return JSON.stringify(value);
  const named = value as Record<string, unknown>;
  // By UTF-16 code units, as the RFC asks and as `sort` does by itself.
  const names = Object.keys(named)
    .filter((name) => named[name] !== undefined)
    .sort();
  return `{${names.map((name) => `${JSON.stringify(name)}:${canonicalJson(named[name])}`).join(',')}}`;
}
