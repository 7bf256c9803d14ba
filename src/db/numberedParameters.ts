const mostKnown = 1000;
const known = new Map<string, string>();

/** `?` → `$1`, `$2` …, as PostgreSQL wants them. Statements hold no `?` inside a literal. */
export function numberedParameters(sql: string): string {
  const cached = known.get(sql);
  if (cached !== undefined) return cached;
  let count = 0;
  const numbered = sql.replace(/\?/g, () => `$${++count}`);
  if (known.size >= mostKnown) known.clear();
  known.set(sql, numbered);
  return numbered;
}
