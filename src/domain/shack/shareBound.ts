import type { Candidate, UnitGiven } from './candidate.js';
import { unitFlow, type UnitEdge } from './unitFlow.js';

/** How many rigs could be served at the most, and by what, when some roles are left out of sight. */
export interface ShareBound {
  readonly atMost: number;
  /** Nothing was left out of sight: these rigs, served so, are an answer. */
  readonly served: readonly Candidate[] | null;
}

/**
 * An upper bound by flow. Each rig passes one unit of flow from a unit for one of its roles to a
 * unit for another; a rig's further roles are left out of sight, so that the truth can only be
 * lower. Exact for rigs of one or two roles whose roles fall into two sides (maximum matching when
 * each needs one), as long as no unit serves on both sides.
 */
export function shareBound(candidates: readonly Candidate[]): ShareBound {
  const roles = [...new Set(candidates.flatMap(({ open }) => [...open.keys()]))].sort();
  let best: ShareBound = { atMost: candidates.length, served: null };
  roles.forEach((_, first) => {
    if (best.served !== null) return;
    const bound = boundBy(candidates, twoSides(candidates, rotated(roles, first)));
    if (bound.served !== null || bound.atMost < best.atMost) best = bound;
  });
  return best;
}

const rotated = <One>(all: readonly One[], first: number): One[] => [
  ...all.slice(first),
  ...all.slice(0, first),
];

interface Sides {
  readonly left: ReadonlySet<string>;
  readonly right: ReadonlySet<string>;
}

/** Puts each role on a side where no rig has another role; a role that fits on neither is left out. */
function twoSides(candidates: readonly Candidate[], roles: readonly string[]): Sides {
  const [left, right] = [new Set<string>(), new Set<string>()];
  for (const role of roles) {
    const rigs = candidates.filter(({ open }) => open.has(role));
    const fits = (side: ReadonlySet<string>) =>
      rigs.every(({ open }) => [...open.keys()].every((other) => !side.has(other)));
    const side = [left, right].find(fits);
    side?.add(role);
  }
  return { left, right };
}

function boundBy(candidates: readonly Candidate[], { left, right }: Sides): ShareBound {
  const nodes = new Map<string, number>();
  const node = (name: string): number => {
    const known = nodes.get(name);
    if (known !== undefined) return known;
    nodes.set(name, nodes.size);
    return nodes.size - 1;
  };
  const [source, sink] = [node('source'), node('sink')];
  const edges: UnitEdge[] = [];
  const meanings: (UnitGiven & { rigId: string })[] = [];
  const seen = new Set<string>();
  const fromUnit = (side: string, unitId: string): number => {
    const name = `${side} ${unitId}`;
    if (!seen.has(name)) {
      seen.add(name);
      edges.push(side === 'left' ? [source, node(name)] : [node(name), sink]);
    }
    return node(name);
  };
  for (const { rigId, open } of candidates) {
    const [entry, exit] = [node(`in ${rigId}`), node(`out ${rigId}`)];
    edges.push([entry, exit]);
    let [hasLeft, hasRight] = [false, false];
    for (const [roleCode, units] of open) {
      for (const unitId of units) {
        if (left.has(roleCode)) {
          const unit = fromUnit('left', unitId);
          meanings[edges.push([unit, entry]) - 1] = { rigId, roleCode, unitId };
          hasLeft = true;
        } else if (right.has(roleCode)) {
          const unit = fromUnit('right', unitId);
          meanings[edges.push([exit, unit]) - 1] = { rigId, roleCode, unitId };
          hasRight = true;
        }
      }
    }
    if (!hasLeft) edges.push([source, entry]);
    if (!hasRight) edges.push([exit, sink]);
  }
  const carries = unitFlow(nodes.size, edges, source, sink);
  const atMost = edges.filter(([from], index) => from === source && carries[index]).length;
  const isExact =
    candidates.every(({ open, isCommitted }) => {
      const isInSight = [...open.keys()].every((role) => left.has(role) || right.has(role));
      return isInSight && !isCommitted;
    }) && ![...seen].some((name) => name.startsWith('left ') && seen.has(`right ${name.slice(5)}`));
  if (!isExact) return { atMost, served: null };
  const given = new Map<string, UnitGiven[]>();
  edges.forEach((edge, index) => {
    if (!carries[index]) return;
    const [entry, exit] = edge;
    const meaning = meanings[index];
    if (meaning) {
      given.set(meaning.rigId, [...(given.get(meaning.rigId) ?? []), meaning]);
    } else if (entry !== source && exit !== sink) {
      const rig = candidates.find(({ rigId }) => nodes.get(`in ${rigId}`) === entry);
      if (rig && !given.has(rig.rigId)) given.set(rig.rigId, []);
    }
  });
  const served = candidates
    .filter(({ rigId }) => given.has(rigId))
    .map((candidate) => ({
      ...candidate,
      open: new Map<string, readonly string[]>(),
      given: [...candidate.given, ...(given.get(candidate.rigId) ?? [])],
    }));
  return { atMost, served };
}
