import { followers } from './followers.js';
import type { TaskEdge } from './taskEdge.js';

/**
 * A circle of tasks each of which waits for the one before it: the ids in order, each once, the
 * first waiting for the last. null when there is none.
 */
export function findCycle(edges: readonly TaskEdge[]): string[] | null {
  const afterwards = followers(edges);
  const cleared = new Set<string>();
  for (const startId of afterwards.keys()) {
    if (cleared.has(startId)) continue;
    // The path walked so far, kept by hand: thousands of tasks would exhaust the call stack.
    const path = [startId];
    const nextChoice = [0];
    const placeOnPath = new Map([[startId, 0]]);
    while (path.length > 0) {
      const top = path.length - 1;
      const id = path[top]!;
      const choice = nextChoice[top]!;
      const next = afterwards.get(id)?.[choice];
      nextChoice[top] = choice + 1;
      if (next === undefined) {
        cleared.add(id);
        placeOnPath.delete(id);
        path.pop();
        nextChoice.pop();
        continue;
      }
      const place = placeOnPath.get(next);
      if (place !== undefined) return path.slice(place);
      if (cleared.has(next)) continue;
      placeOnPath.set(next, path.length);
      path.push(next);
      nextChoice.push(0);
    }
  }
  return null;
}
