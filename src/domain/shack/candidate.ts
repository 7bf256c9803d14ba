/** A rig in the search: what it still needs, and what it has been given. */
export interface Candidate {
  readonly rigId: string;
  /** Units that can fill each role still open. */
  readonly open: ReadonlyMap<string, readonly string[]>;
  readonly given: readonly UnitGiven[];
  /** Something contested has been given to it, so that it must be served in full. */
  readonly isCommitted: boolean;
}

export interface UnitGiven {
  readonly roleCode: string;
  readonly unitId: string;
}

/** Every unit that still matters, with the rigs and roles that it could fill. */
export function wantedUnits(
  candidates: readonly Candidate[],
): Map<string, { rigId: string; roleCode: string }[]> {
  const wanted = new Map<string, { rigId: string; roleCode: string }[]>();
  for (const { rigId, open } of candidates) {
    for (const [roleCode, units] of open) {
      for (const unit of units) {
        const wishes = wanted.get(unit);
        if (wishes) wishes.push({ rigId, roleCode });
        else wanted.set(unit, [{ rigId, roleCode }]);
      }
    }
  }
  return wanted;
}

/** Gives a unit to one rig, which fills every open role it can; nobody else can have it then. */
export function giveUnit(
  candidates: readonly Candidate[],
  rigId: string,
  unitId: string,
  isCommitted: boolean,
): Candidate[] {
  return candidates.map((candidate) => {
    const isTaker = candidate.rigId === rigId;
    const given = [...candidate.given];
    const open = new Map<string, readonly string[]>();
    for (const [roleCode, units] of candidate.open) {
      if (!units.includes(unitId)) open.set(roleCode, units);
      else if (isTaker) given.push({ roleCode, unitId });
      else
        open.set(
          roleCode,
          units.filter((unit) => unit !== unitId),
        );
    }
    return isTaker
      ? { ...candidate, open, given, isCommitted: candidate.isCommitted || isCommitted }
      : { ...candidate, open };
  });
}
