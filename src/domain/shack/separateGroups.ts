import { wantedUnits, type Candidate } from './candidate.js';

/** Rigs that want nothing in common fall into groups that can be settled one by one. */
export function separateGroups(candidates: readonly Candidate[]): Candidate[][] {
  const groupOf = new Map<string, string>(candidates.map(({ rigId }) => [rigId, rigId]));
  const leader = (rigId: string): string => {
    let at = rigId;
    for (let next = groupOf.get(at); next !== undefined && next !== at; next = groupOf.get(at)) {
      at = next;
    }
    groupOf.set(rigId, at);
    return at;
  };
  for (const wishes of wantedUnits(candidates).values()) {
    const [first, ...others] = wishes.map(({ rigId }) => leader(rigId));
    for (const other of others) groupOf.set(leader(other), leader(first as string));
  }
  const groups = new Map<string, Candidate[]>();
  for (const candidate of candidates) {
    const key = leader(candidate.rigId);
    const group = groups.get(key);
    if (group) group.push(candidate);
    else groups.set(key, [candidate]);
  }
  return [...groups.values()];
}
