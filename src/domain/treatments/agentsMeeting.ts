/** Two kinds of agent that must not meet. */
export interface ForbiddenPair {
  readonly agents: readonly [string, string];
  readonly why: string;
}

/** The forbidden pairs among agents used together, in the order of the list of pairs. */
export function agentsMeeting(
  together: readonly string[],
  pairs: readonly ForbiddenPair[],
): ForbiddenPair[] {
  return pairs.filter(({ agents: [one, other] }) =>
    one === other
      ? together.filter((agent) => agent === one).length > 1
      : together.includes(one) && together.includes(other),
  );
}

/** A treatment of one surface. */
export interface SurfaceTreatment {
  readonly treatmentId: string;
  /** Names the surface once. */
  readonly surfaceKey: string;
  readonly agents: readonly string[];
  /** Rinsed off at its end, so that nothing is left to meet the next. */
  readonly isRinsed: boolean;
  readonly treatedAtMs: number;
}

export interface Meeting {
  /** The earlier treatment whose agent may still be there. */
  readonly earlierId: string;
  readonly pair: ForbiddenPair;
}

/**
 * For each treatment, the earlier ones of the same surface, back to the last rinse, whose agents must
 * not meet its own. @returns by the id of the later treatment; none, no entry
 */
export function successiveMeetings(
  treatments: readonly SurfaceTreatment[],
  pairs: readonly ForbiddenPair[],
): Map<string, Meeting[]> {
  const left = new Map<string, SurfaceTreatment[]>();
  const meetings = new Map<string, Meeting[]>();
  const inOrder = [...treatments].sort(
    (one, other) =>
      one.treatedAtMs - other.treatedAtMs || (one.treatmentId < other.treatmentId ? -1 : 1),
  );
  for (const treatment of inOrder) {
    const before = left.get(treatment.surfaceKey) ?? [];
    const found = before.flatMap((earlier) =>
      pairs
        .filter(({ agents: [one, other] }) => {
          const meets = (first: string, second: string): boolean =>
            earlier.agents.includes(first) && treatment.agents.includes(second);
          return meets(one, other) || meets(other, one);
        })
        .map((pair) => ({ earlierId: earlier.treatmentId, pair })),
    );
    if (found.length > 0) meetings.set(treatment.treatmentId, found);
    left.set(treatment.surfaceKey, treatment.isRinsed ? [] : [...before, treatment]);
  }
  return meetings;
}
