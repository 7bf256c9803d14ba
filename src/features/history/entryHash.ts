import { hash } from 'node:crypto';
import { canonicalJson } from '../../domain/history/canonicalJson.js';
import { fieldSalt, isOpenField } from './fieldSalt.js';

export type KeptState = Record<string, unknown> | null;

/** What stands in for values that were taken out of an entry. */
export interface Redacted {
  /** The salts of the values that are still there, by `after.note`; the entry's own is gone. */
  salts: Record<string, string>;
  /** The salted hashes of the values that are not, by `after.name`. */
  hashes: Record<string, string>;
}

/** An entry of the log, as far as its hash covers it. */
export interface LogEntry {
  sequence: number;
  id: string;
  changedAt: string;
  actorId: string | null;
  recordTable: string;
  recordId: string;
  action: string;
  before: KeptState;
  after: KeptState;
  salt: string | null;
  redacted: Redacted | null;
}

/** What the first entry follows. */
export const beginningOfLog = '0'.repeat(64);

/**
 * The hash of an entry, which covers the hash of the entry before it: whoever alters one entry must
 * alter every later one. Values that a person wrote are covered by a salted hash each, so that one
 * can be taken out later without breaking the chain.
 * @returns SHA-256 in 64 hexadecimal digits
 */
export const entryHash = (entry: LogEntry, previousHash: string): string =>
  hash(
    'sha256',
    canonicalJson({
      sequence: entry.sequence,
      previous: previousHash,
      id: entry.id,
      changedAt: entry.changedAt,
      actorId: entry.actorId,
      recordTable: entry.recordTable,
      recordId: entry.recordId,
      action: entry.action,
      before: covered(entry, 'before'),
      after: covered(entry, 'after'),
    }),
  );

/** A state with the salted hash of each value in place of the value. */
function covered(entry: LogEntry, side: 'before' | 'after'): KeptState {
  const state = entry[side];
  if (state === null) return null;
  const shown: Record<string, unknown> = {};
  for (const [field, value] of Object.entries(state)) {
    if (value === null || value === undefined) continue;
    shown[field] = isOpenField(field)
      ? value
      : saltedHash(value, saltOf(entry, `${side}.${field}`));
  }
  for (const [key, hashed] of Object.entries(entry.redacted?.hashes ?? {})) {
    if (key.startsWith(`${side}.`)) shown[key.slice(side.length + 1)] = hashed;
  }
  return shown;
}

export const saltedHash = (value: unknown, salt: string): string =>
  hash('sha256', `${salt} ${canonicalJson(value)}`);

/** @param key side and field: `after.note` */
export const saltOf = ({ salt, redacted }: LogEntry, key: string): string =>
  salt === null ? (redacted?.salts[key] ?? '') : fieldSalt(salt, key);
