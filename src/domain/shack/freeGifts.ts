import { giveUnit, wantedUnits, type Candidate } from './candidate.js';

/** The rigs still in question, and those that have all they need. */
export interface Settled {
  readonly open: readonly Candidate[];
  readonly served: readonly Candidate[];
}

/**
 * What costs nobody anything: a unit that one rig alone could use is given to it, a rig with all it
 * needs is served, and a rig that lacks a role for good is left out.
 * @returns null when a rig that was promised to be served can no longer be.
 */
export function freeGifts(candidates: readonly Candidate[]): Settled | null {
  const served: Candidate[] = [];
  let open = [...candidates];
  for (;;) {
    const before = open;
    const isHopeless = ({ open: roles }: Candidate) =>
      [...roles.values()].some((units) => units.length === 0);
    if (open.some((candidate) => candidate.isCommitted && isHopeless(candidate))) return null;
    open = open.filter((candidate) => !isHopeless(candidate));
    for (const [unitId, wishes] of wantedUnits(open)) {
      const [wish] = wishes;
      if (wish === undefined || wishes.some(({ rigId }) => rigId !== wish.rigId)) continue;
      const taker = open.find(({ rigId }) => rigId === wish.rigId);
      if (!taker || ![...taker.open.values()].some((units) => units.includes(unitId))) continue;
      open = giveUnit(open, wish.rigId, unitId, false);
    }
    served.push(...open.filter((candidate) => candidate.open.size === 0));
    open = open.filter((candidate) => candidate.open.size > 0);
    const isSame =
      open.length === before.length &&
      open.every((candidate, index) => candidate === before[index]);
    if (isSame) return { open, served };
  }
}
