import { MinHeap } from '../minHeap.js';
import { findCycle } from './findCycle.js';
import { followers } from './followers.js';
import type { TaskEdge } from './taskEdge.js';

/**
 * The tasks in an order in which they can be done. Wherever the edges leave a choice the order
 * given is kept. Edges to or from tasks that are not listed are left out of account.
 *
 * @throws RangeError that names the cycle, when the edges contain one. Look for it first with
 * `findCycle`, to refuse it in words.
 */
export function taskOrder(taskIds: readonly string[], edges: readonly TaskEdge[]): string[] {
  const placeGiven = new Map(taskIds.map((id, place) => [id, place]));
  const known = edges.filter(
    (edge) => placeGiven.has(edge.beforeId) && placeGiven.has(edge.afterId),
  );
  const afterwards = followers(known);
  const waitingFor = new Int32Array(taskIds.length);
  for (const { afterId } of known) waitingFor[placeGiven.get(afterId)!]! += 1;

  const ready = new MinHeap();
  waitingFor.forEach((count, place) => count === 0 && ready.push(place));
  const order: string[] = [];
  for (let place = ready.pop(); place !== undefined; place = ready.pop()) {
    const id = taskIds[place]!;
    order.push(id);
    for (const afterId of afterwards.get(id) ?? []) {
      const afterPlace = placeGiven.get(afterId)!;
      waitingFor[afterPlace]! -= 1;
      if (waitingFor[afterPlace] === 0) ready.push(afterPlace);
    }
  }
  if (order.length < taskIds.length) {
    const cycle = findCycle(known) ?? [];
    throw new RangeError(`These tasks wait for one another: ${cycle.join(', ')}.`);
  }
  return order;
}
