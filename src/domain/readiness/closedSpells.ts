/** What a record said of its own closing (a finding settled, a hazard cleared), from when it was written. */
export interface ClosingVersion {
  readonly writtenAt: string;
  /** null while it stood open. */
  readonly closedAt: string | null;
  /** How it was closed, in the record's own word or sentence. */
  readonly how: string | null;
}

/** A stretch in which something was closed: from an instant on, until it was opened again. */
export interface ClosedSpell {
  readonly from: string;
  /** When it was opened again; null while it is closed. */
  readonly until: string | null;
  readonly how: string | null;
}

/**
 * When something was closed, through all that was written of it. Opening again ends a stretch when
 * it is written, for it has no date of its own. Closed in another way while it is closed is a second
 * decision, and both hold; closed in the same way at another instant is a date put right.
 * @param versions oldest first.
 */
export function closedSpells(versions: readonly ClosingVersion[]): ClosedSpell[] {
  const spells: ClosedSpell[] = [];
  for (const { writtenAt, closedAt, how } of versions) {
    const last = spells.at(-1);
    const running = last?.until === null ? last : undefined;
    if (running) spells.pop();
    if (closedAt === null) {
      if (running && running.from < writtenAt) spells.push({ ...running, until: writtenAt });
      continue;
    }
    const isSecondDecision = running !== undefined && running.how !== how;
    const from = isSecondDecision && running.from < closedAt ? running.from : closedAt;
    spells.push({ from, until: null, how });
  }
  return spells;
}

/** The stretch that an instant lies in; nothing where it stood open then. */
export const closedAt = (spells: readonly ClosedSpell[], at: string): ClosedSpell | undefined =>
  spells.find(({ from, until }) => from <= at && (until === null || at < until));
