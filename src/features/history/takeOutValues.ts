import { saltedHash, saltOf, type KeptState, type LogEntry, type Redacted } from './entryHash.js';
import { isOpenField } from './fieldSalt.js';

/** An entry without the values of some fields; null when it holds none of them. */
export function takeOutValues(
  entry: LogEntry,
  fields: readonly string[],
): (LogEntry & { redacted: Redacted }) | null {
  const redacted: Redacted = { salts: {}, hashes: { ...entry.redacted?.hashes } };
  let isTouched = false;
  const without = (side: 'before' | 'after'): KeptState => {
    const state = entry[side];
    if (state === null) return null;
    const rest: Record<string, unknown> = {};
    for (const [field, value] of Object.entries(state)) {
      const key = `${side}.${field}`;
      const isValue = value !== null && value !== undefined && !isOpenField(field);
      if (isValue && fields.includes(field)) {
        redacted.hashes[key] = saltedHash(value, saltOf(entry, key));
        isTouched = true;
        continue;
      }
      rest[field] = value;
      if (isValue) redacted.salts[key] = saltOf(entry, key);
    }
    return rest;
  };
  const changed = { ...entry, before: without('before'), after: without('after'), salt: null };
  return isTouched ? { ...changed, redacted } : null;
}
