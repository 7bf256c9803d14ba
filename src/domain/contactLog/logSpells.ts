/** Something that lasted, or was a moment. */
export interface Stretch {
  readonly startedAtMs: number;
  readonly endedAtMs: number;
}

/** A stretch of use with the contacts that were made in it. */
export interface LogSpell<Contact extends Stretch> extends Stretch {
  readonly contacts: readonly Contact[];
}

/**
 * Contacts of one rig as stretches of use: from the start of the first to the end of the last, a new
 * one where nothing was logged for longer than the gap.
 */
export function logSpells<Contact extends Stretch>(
  contacts: readonly Contact[],
  gapMs: number,
): LogSpell<Contact>[] {
  const spells: { startedAtMs: number; endedAtMs: number; contacts: Contact[] }[] = [];
  for (const contact of [...contacts].sort((one, two) => one.startedAtMs - two.startedAtMs)) {
    const { startedAtMs, endedAtMs } = contact;
    const last = spells.at(-1);
    if (last === undefined || startedAtMs - last.endedAtMs > gapMs) {
      spells.push({ startedAtMs, endedAtMs, contacts: [contact] });
      continue;
    }
    last.endedAtMs = Math.max(last.endedAtMs, endedAtMs);
    last.contacts.push(contact);
  }
  return spells;
}

/** Whole minutes of a stretch as use is kept, rounded up: a single contact is one at least. */
export const minutesOf = ({ startedAtMs, endedAtMs }: Stretch): number =>
  Math.max(1, Math.ceil((endedAtMs - startedAtMs) / 60_000));
