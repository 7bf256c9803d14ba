import type { TaskEdge } from './taskEdge.js';

/** For each task that something waits for: the tasks that wait for it, in the order of the edges. */
export function followers(edges: readonly TaskEdge[]): Map<string, string[]> {
  const byTask = new Map<string, string[]>();
  for (const { beforeId, afterId } of edges) {
    const known = byTask.get(beforeId);
    if (known === undefined) byTask.set(beforeId, [afterId]);
    else known.push(afterId);
  }
  return byTask;
}
