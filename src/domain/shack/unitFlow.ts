/** A connection that carries at most one, between nodes numbered from 0. */
export type UnitEdge = readonly [from: number, to: number];

interface Search {
  readonly edges: readonly UnitEdge[];
  readonly carries: boolean[];
  /** Edges at each node, in either direction. */
  readonly touching: readonly (readonly number[])[];
  readonly source: number;
  readonly sink: number;
  /** Steps from the source, by what is still free; UNSEEN where it cannot be reached. */
  readonly level: Int32Array;
  /** How many of a node's edges have been tried in this round. */
  readonly tried: Int32Array;
}

const UNSEEN = -1;

/**
 * The largest flow from one node to another where every edge carries at most one, by rounds of
 * shortest augmenting paths (Dinic 1970): for unit networks about √nodes rounds, each one search of
 * all edges; on a bipartite graph this is the matching of Hopcroft and Karp (1973).
 * @returns for every edge, in the order given, whether it carries.
 */
export function unitFlow(
  nodeCount: number,
  edges: readonly UnitEdge[],
  source: number,
  sink: number,
): boolean[] {
  const touching: number[][] = Array.from({ length: nodeCount }, () => []);
  edges.forEach(([from, to], index) => {
    touching[from]?.push(index);
    touching[to]?.push(index);
  });
  const search: Search = {
    edges,
    carries: edges.map(() => false),
    touching,
    source,
    sink,
    level: new Int32Array(nodeCount),
    tried: new Int32Array(nodeCount),
  };
  while (reachesSink(search)) {
    search.tried.fill(0);
    while (augments(search, source));
  }
  return search.carries;
}

/** Where an edge leads from a node: forwards where it is free, backwards where it carries. */
function leadsTo({ edges, carries }: Search, index: number, node: number): number | null {
  const [from, to] = edges[index] as UnitEdge;
  const [leaves, next] = carries[index] === true ? [to, from] : [from, to];
  return leaves === node ? next : null;
}

function reachesSink(search: Search): boolean {
  const { level, source, sink, touching } = search;
  level.fill(UNSEEN);
  level[source] = 0;
  const queue = [source];
  for (const node of queue) {
    for (const index of touching[node] as readonly number[]) {
      const next = leadsTo(search, index, node);
      if (next === null || level[next] !== UNSEEN) continue;
      level[next] = (level[node] as number) + 1;
      queue.push(next);
    }
  }
  return level[sink] !== UNSEEN;
}

/** Sends one more from a node along falling levels; depth is that of the shortest path. */
function augments(search: Search, node: number): boolean {
  const { level, tried, touching, carries, sink } = search;
  if (node === sink) return true;
  const own = touching[node] as readonly number[];
  for (; (tried[node] as number) < own.length; tried[node] = (tried[node] as number) + 1) {
    const index = own[tried[node] as number] as number;
    const next = leadsTo(search, index, node);
    if (next === null || level[next] !== (level[node] as number) + 1) continue;
    if (!augments(search, next)) continue;
    carries[index] = !(carries[index] as boolean);
    tried[node] = (tried[node] as number) + 1;
    return true;
  }
  return false;
}
