/** What every change touches says nothing. */
const always = new Set(['id', 'version', 'recordedAt', 'changedAt']);

/** Names of the fields that differ between two kept states (JSON text or null), by name. */
export function changedFields(before: unknown, after: unknown): string[] {
  const [old, now] = [before, after].map(
    (kept) => (typeof kept === 'string' ? JSON.parse(kept) : {}) as Record<string, unknown>,
  );
  const names = new Set([...Object.keys(old ?? {}), ...Object.keys(now ?? {})]);
  const shown = (value: unknown) => JSON.stringify(value ?? null);
  return [...names]
    .filter((name) => !always.has(name) && shown(old?.[name]) !== shown(now?.[name]))
    .sort();
}
