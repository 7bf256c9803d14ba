import { useRef } from 'react';
import { useDraft } from './useDraft.js';

/** What a record holds, each field as text; empty for nothing. */
export type Fields = Readonly<Record<string, string>>;

interface KeptFields<Values extends Fields> {
  typed: Partial<Values>;
  /** What the record held when the typing began, and its version then; null until it does. */
  base: Values | null;
  version: number;
}

/** A field that somebody else changed since the typing began. */
export interface TheirChange<Name extends string> {
  name: Name;
  theirs: string;
  /** What was typed here; null when this field was left alone. */
  mine: string | null;
}

export interface FieldDraft<Values extends Fields> {
  valueOf: (name: keyof Values & string) => string;
  type: (name: keyof Values & string, value: string) => void;
  /** What was typed and differs from the record. */
  changes: Partial<Values>;
  /** The version to send with them. */
  version: number;
  /** Empty unless the record was changed elsewhere since the typing began. */
  theirChanges: readonly TheirChange<keyof Values & string>[];
  /** Goes on from the record as it is now, with these texts in the fields that clashed. */
  settle: (settled: Partial<Values>) => void;
  /** Once they are written: what was typed while they were on their way stays. */
  clear: () => void;
  isKept: boolean;
}

/**
 * Changes typed to a record that others may change meanwhile. Only the fields that were typed in are
 * sent; what somebody else changed since is laid side by side with them, and nothing is overwritten
 * before the person has settled it.
 * @param now the record as it is known to be
 */
export function useFieldDraft<Values extends Fields>(
  place: string,
  now: Values,
  nowVersion: number,
): FieldDraft<Values> {
  type Name = keyof Values & string;
  const untouched: KeptFields<Values> = { typed: {}, base: null, version: 0 };
  const { draft, change, clear, isKept } = useDraft(place, untouched);
  const { typed, base, version } = draft;
  // What was written last from here, until the record comes back and shows it.
  const written = useRef<{ base: Values; version: number } | null>(null);
  const known = () =>
    written.current && written.current.version > nowVersion
      ? written.current
      : { base: now, version: nowVersion };
  const names = Object.keys(now) as Name[];
  const mineOf = (name: Name): string | undefined => typed[name];
  const isStale = base !== null && nowVersion > version;
  const changed = names.filter((name) => {
    const mine = mineOf(name);
    return mine !== undefined && mine !== now[name];
  });
  const theirChanges = isStale
    ? names
        .filter((name) => now[name] !== base[name] && now[name] !== mineOf(name))
        .map((name) => ({ name, theirs: now[name] ?? '', mine: mineOf(name) ?? null }))
    : [];
  return {
    isKept,
    valueOf: (name) => mineOf(name) ?? now[name] ?? '',
    type: (name, value) => {
      change((before) => ({
        typed: { ...before.typed, [name]: value },
        ...(before.base === null && known()),
      }));
    },
    changes: Object.fromEntries(changed.map((name) => [name, mineOf(name)])) as Partial<Values>,
    // A change elsewhere that touches none of these fields leaves nothing to settle.
    version: theirChanges.length === 0 ? Math.max(nowVersion, version) : version,
    theirChanges,
    settle: (settled) => {
      change((before) => ({
        typed: { ...before.typed, ...settled },
        base: now,
        version: nowVersion,
      }));
    },
    clear: () => {
      // Each change raises the version by one.
      written.current = { base: { ...now, ...typed }, version: nowVersion + 1 };
      let isLeft = false;
      change((before) => {
        const left = Object.entries(before.typed).filter(([name, value]) => value !== typed[name]);
        isLeft = left.length > 0;
        return { ...known(), typed: Object.fromEntries(left) as Partial<Values> };
      });
      if (!isLeft) clear();
    },
  };
}
