import type { Candidate } from './candidate.js';
import { freeGifts } from './freeGifts.js';
import { searchGroup, type SearchEffort } from './searchGroup.js';
import { separateGroups } from './separateGroups.js';
import { shareBound } from './shareBound.js';
import type { RoleAssignment, Shack, ShackRig } from './shack.js';

/** Steps of branching before the search settles for less than proof; seconds, not minutes. */
export const SEARCH_STEPS = 4000;

export interface AtOnce {
  /** Each rig of the set, with the accessory that fills each of its roles. */
  readonly served: ReadonlyMap<string, readonly RoleAssignment[]>;
  /** No larger set exists: proven, unless the search was cut short. */
  readonly isProven: boolean;
  /** No set is larger than this. */
  readonly atMost: number;
}

/**
 * The largest set of rigs that can be on the air at once, each accessory at one rig at a time, and
 * whatever is housed together at the same rig. With one role a rig this is maximum bipartite
 * matching, with two sides of roles a maximum flow, both exact at once (`shareBound`). With three
 * roles or with housings that serve several it is as hard as three-dimensional matching (Karp
 * 1972): branch and bound over groups that share nothing, exact unless `maxSteps` is used up.
 */
export function largestAtOnce(shack: Shack, maxSteps: number = SEARCH_STEPS): AtOnce {
  const candidates = shack.rigs.map((rig) => candidateOf(rig, shack.unitOf));
  const settled = freeGifts(candidates) ?? { open: [], served: [] };
  const effort: SearchEffort = { stepsLeft: maxSteps, isCutShort: false };
  const served = [...settled.served];
  let atMost = served.length;
  for (const group of separateGroups(settled.open)) {
    const own: SearchEffort = { stepsLeft: effort.stepsLeft, isCutShort: false };
    const found = searchGroup(group, -1, own) ?? [];
    atMost += own.isCutShort ? shareBound(group).atMost : found.length;
    effort.stepsLeft = Math.max(0, own.stepsLeft);
    effort.isCutShort ||= own.isCutShort;
    served.push(...found);
  }
  const rigs = new Map(shack.rigs.map((rig) => [rig.rigId, rig]));
  return {
    served: new Map(
      served.map((candidate) => [
        candidate.rigId,
        assignments(candidate, rigs.get(candidate.rigId) as ShackRig, shack.unitOf),
      ]),
    ),
    isProven: !effort.isCutShort || atMost === served.length,
    atMost,
  };
}

function candidateOf({ rigId, needs }: ShackRig, unitOf: Shack['unitOf']): Candidate {
  const open = new Map(
    needs.map(({ roleCode, accessoryIds }) => [
      roleCode,
      [...new Set(accessoryIds.map((id) => unitOf.get(id) ?? id))],
    ]),
  );
  return { rigId, open, given: [], isCommitted: false };
}

/** Back from units to the accessories in them, in the order in which the rig needs its roles. */
function assignments(
  { given }: Candidate,
  { needs }: ShackRig,
  unitOf: Shack['unitOf'],
): RoleAssignment[] {
  return needs.flatMap(({ roleCode, accessoryIds }) => {
    const unitId = given.find((gift) => gift.roleCode === roleCode)?.unitId;
    const accessoryId = accessoryIds.find((id) => (unitOf.get(id) ?? id) === unitId);
    return accessoryId === undefined ? [] : [{ roleCode, accessoryId }];
  });
}
