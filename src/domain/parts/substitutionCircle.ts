import { findCycle } from '../network/findCycle.js';

/** One part type may stand in for another; for a mutual one, either for the other. */
export interface SubstitutionEdge {
  readonly originalId: string;
  readonly substituteId: string;
  readonly isMutual: boolean;
}

/**
 * A circle of one-way substitutions: ids in order, each once, each served by the next and the last
 * by the first. Types that serve each other both ways count as one, by way of any mutual
 * substitutions. null when there is none.
 * Law of the trade: "may stand in for" goes downhill (more ratings for fewer); a circle of one-way
 * steps says that something is both better and worse than itself, so one step must be mutual or wrong.
 */
export function substitutionCircle(edges: readonly SubstitutionEdge[]): string[] | null {
  const groups = mutualGroups(edges);
  const groupOf = (id: string): string => groups.get(id) ?? id;
  const oneWay = edges.filter(({ isMutual }) => !isMutual);
  const within = oneWay.find(
    ({ originalId, substituteId }) => groupOf(originalId) === groupOf(substituteId),
  );
  if (within) return [within.originalId, within.substituteId];
  return findCycle(
    oneWay.map(({ originalId, substituteId }) => ({
      beforeId: groupOf(originalId),
      afterId: groupOf(substituteId),
    })),
  );
}

/** Each id that has a mutual substitution, with one id that stands for all that it reaches by them. */
function mutualGroups(edges: readonly SubstitutionEdge[]): Map<string, string> {
  const above = new Map<string, string>();
  const top = (id: string): string => {
    let at = id;
    for (let next = above.get(at); next !== undefined && next !== at; next = above.get(at))
      at = next;
    return at;
  };
  for (const { originalId, substituteId, isMutual } of edges) {
    if (isMutual) above.set(top(substituteId), top(originalId));
  }
  return new Map([...above.keys()].map((id) => [id, top(id)]));
}
