import { followers } from '../network/followers.js';
import type { TaskEdge } from '../network/taskEdge.js';
import { taskOrder } from '../network/taskOrder.js';

export interface LongestChains {
  /** Hours of the longest chain of tasks, one a trial. */
  readonly hours: Float64Array;
  /** By task: the share of trials, 0 to 1, in which it lies on a longest chain. */
  readonly criticality: ReadonlyMap<string, number>;
}

/**
 * The longest chain of tasks that wait for one another, trial by trial: the least time in which
 * any number of hands could do the work, were nobody to wait for hands.
 *
 * @param rows hours of each task, one a trial; edges to or from others are left out of account.
 * @throws RangeError that names the circle, when the edges contain one.
 */
export function longestChains(
  rows: ReadonlyMap<string, Float64Array>,
  edges: readonly TaskEdge[],
  trials: number,
): LongestChains {
  const known = edges.filter(({ beforeId, afterId }) => rows.has(beforeId) && rows.has(afterId));
  const order = taskOrder([...rows.keys()], known);
  const afterwards = followers(known);
  const starts = new Map(order.map((id) => [id, new Float64Array(trials)]));
  const ends = new Map<string, Float64Array>();
  const hours = new Float64Array(trials);
  for (const id of order) {
    const end = added(starts.get(id)!, rows.get(id)!);
    ends.set(id, end);
    for (const afterId of afterwards.get(id) ?? []) raise(starts.get(afterId)!, end);
    raise(hours, end);
  }

  const onChain = new Map<string, Uint8Array>();
  const criticality = new Map<string, number>();
  for (const id of order.reverse()) {
    const marks = new Uint8Array(trials);
    const end = ends.get(id)!;
    markEqual(marks, end, hours, null);
    for (const afterId of afterwards.get(id) ?? []) {
      markEqual(marks, end, starts.get(afterId)!, onChain.get(afterId)!);
    }
    onChain.set(id, marks);
    criticality.set(id, marks.reduce((sum, mark) => sum + mark, 0) / trials);
  }
  return { hours, criticality };
}

function added(starts: Float64Array, row: Float64Array): Float64Array {
  const end = new Float64Array(row.length);
  for (let trial = 0; trial < row.length; trial += 1) end[trial] = starts[trial]! + row[trial]!;
  return end;
}

function raise(target: Float64Array, to: Float64Array): void {
  for (let trial = 0; trial < to.length; trial += 1) {
    if (to[trial]! > target[trial]!) target[trial] = to[trial]!;
  }
}

/** Marks the trials in which two instants are one and the other side is marked too. */
function markEqual(
  marks: Uint8Array,
  end: Float64Array,
  other: Float64Array,
  required: Uint8Array | null,
): void {
  for (let trial = 0; trial < marks.length; trial += 1) {
    if (end[trial] === other[trial] && (required === null || required[trial] === 1)) {
      marks[trial] = 1;
    }
  }
}
