import { giveUnit, wantedUnits, type Candidate } from './candidate.js';
import { freeGifts } from './freeGifts.js';
import { separateGroups } from './separateGroups.js';
import { shareBound, type ShareBound } from './shareBound.js';

/** How much searching is allowed, and how it went. */
export interface SearchEffort {
  stepsLeft: number;
  /** The limit was hit: what was found may not be the most. */
  isCutShort: boolean;
}

/**
 * The most rigs that can be served at once, if more than `floor`; null when no more can.
 * Branch and bound: what is free is given, what wants nothing in common is settled apart, the bound
 * by flow ends what cannot win, and else one contested unit is tried with each rig in turn.
 */
export function searchGroup(
  candidates: readonly Candidate[],
  floor: number,
  effort: SearchEffort,
): readonly Candidate[] | null {
  const settled = freeGifts(candidates);
  if (settled === null) return null;
  const { open, served } = settled;
  if (open.length === 0) return served.length > floor ? served : null;
  if (served.length + open.length <= floor) return null;
  const groups = separateGroups(open);
  const [only] = groups;
  if (groups.length > 1 || only === undefined) return searchApart(groups, served, floor, effort);
  const found = searchOne(only, floor - served.length, effort, boundOf(only));
  return found === null ? null : [...served, ...found];
}

function searchApart(
  groups: readonly (readonly Candidate[])[],
  served: readonly Candidate[],
  floor: number,
  effort: SearchEffort,
): readonly Candidate[] | null {
  const found = [...served];
  const bounded = groups.map((group) => ({ group, bound: boundOf(group) }));
  let hopes = bounded.reduce((sum, { bound }) => sum + bound.atMost, 0);
  if (found.length + hopes <= floor) return null;
  for (const { group, bound } of bounded) {
    hopes -= bound.atMost;
    const best = searchOne(group, floor - found.length - hopes, effort, bound);
    if (best === null) return null;
    found.push(...best);
  }
  return found.length > floor ? found : null;
}

function searchOne(
  group: readonly Candidate[],
  floor: number,
  effort: SearchEffort,
  bound: ShareBound,
): readonly Candidate[] | null {
  if (bound.atMost <= floor) return null;
  if (bound.served !== null) return bound.served;
  if (effort.stepsLeft <= 0) effort.isCutShort = true;
  effort.stepsLeft -= 1;
  // Something is in hand already: past the limit it is not improved upon.
  if (effort.isCutShort && floor >= 0) return null;
  const target = hardestToServe(group);
  let best: readonly Candidate[] | null = null;
  const keep = (found: readonly Candidate[] | null) => {
    if (found !== null && found.length > (best?.length ?? floor)) best = found;
  };
  for (const unitId of distinctChoices(group, target)) {
    keep(searchGroup(giveUnit(group, target.rigId, unitId, true), bestOr(best, floor), effort));
    if (bestOr(best, floor) >= bound.atMost) return best;
    // Once the limit is hit, the first way that works is taken, so that the search ends.
    if (effort.isCutShort && best !== null) return best;
  }
  if (target.isCommitted || target.open.size === 1) return best;
  const without = group.filter((candidate) => !isAlike(candidate, target));
  keep(searchGroup(without, bestOr(best, floor), effort));
  return best;
}

/** While a rig is half served the flow says little that it did not say before: not worth its time. */
const boundOf = (group: readonly Candidate[]): ShareBound =>
  group.some(({ isCommitted }) => isCommitted)
    ? { atMost: group.length, served: null }
    : shareBound(group);

const bestOr = (best: readonly Candidate[] | null, floor: number): number => best?.length ?? floor;

const choices = ({ open }: Candidate): number =>
  [...open.values()].reduce((ways, units) => ways * units.length, 1);

/** A rig that is half served comes first, then the one with the fewest ways. */
function hardestToServe(group: readonly Candidate[]): Candidate {
  return group.reduce((hardest, candidate) => {
    if (candidate.isCommitted !== hardest.isCommitted) {
      return candidate.isCommitted ? candidate : hardest;
    }
    return choices(candidate) < choices(hardest) ? candidate : hardest;
  });
}

/** Units for the target's scarcest role, the least wanted first; of interchangeable ones, one. */
function distinctChoices(group: readonly Candidate[], target: Candidate): string[] {
  const units = [...target.open.values()].reduce((scarcest, role) =>
    role.length < scarcest.length ? role : scarcest,
  );
  const wanted = wantedUnits(group);
  const wishesOf = (unit: string) => wanted.get(unit) ?? [];
  const byWishes = new Map(
    units.map((unit) => [
      wishesOf(unit)
        .map(({ rigId, roleCode }) => `${rigId} ${roleCode}`)
        .sort()
        .join('|'),
      unit,
    ]),
  );
  return [...byWishes.values()].sort(
    (left, right) => wishesOf(left).length - wishesOf(right).length || (left < right ? -1 : 1),
  );
}

/** Rigs that could use just the same units may stand in for one another. */
function isAlike(left: Candidate, right: Candidate): boolean {
  return left.rigId === right.rigId || (!left.isCommitted && wishKey(left) === wishKey(right));
}

const wishKey = ({ open }: Candidate): string =>
  [...open]
    .map(([role, units]) => `${role}:${[...units].sort().join(',')}`)
    .sort()
    .join('|');
