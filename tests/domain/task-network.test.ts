import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findCycle } from '../../src/domain/network/findCycle.js';
import { readyTasks } from '../../src/domain/network/readyTasks.js';
import type { TaskEdge } from '../../src/domain/network/taskEdge.js';
import { taskOrder } from '../../src/domain/network/taskOrder.js';

/** Edges written as 'wash>dry'. */
const edges = (...written: string[]): TaskEdge[] =>
  written.map((edge) => {
    const [beforeId, afterId] = edge.split('>');
    return { beforeId: beforeId!, afterId: afterId! };
  });

describe('tasks that wait for one another', () => {
  it('are found as a circle, in order', () => {
    expect(findCycle(edges('strip>wash', 'wash>dry', 'dry>wax', 'wax>wash'))).toEqual([
      'wash',
      'dry',
      'wax',
    ]);
  });

  it('include a task that waits for itself', () => {
    expect(findCycle(edges('wash>wash'))).toEqual(['wash']);
  });

  it('are not those that only meet again: two ways from one task to another', () => {
    expect(findCycle(edges('a>b', 'a>c', 'b>d', 'c>d', 'a>d'))).toBeNull();
    expect(findCycle([])).toBeNull();
  });

  it('are found among ten thousand in a row', () => {
    const row = Array.from({ length: 10_000 }, (_, index) => `${index}>${index + 1}`);
    expect(findCycle(edges(...row))).toBeNull();
    expect(findCycle(edges(...row, '10000>0'))).toHaveLength(10_001);
  });
});

const network = fc.integer({ min: 1, max: 12 }).chain((count) =>
  fc.array(fc.tuple(fc.nat(count - 1), fc.nat(count - 1)), { maxLength: 20 }).map((pairs) => ({
    ids: Array.from({ length: count }, (_, index) => `t${index}`),
    edges: pairs.map(([from, to]): TaskEdge => ({ beforeId: `t${from}`, afterId: `t${to}` })),
  })),
);

/** Whether an id can be reached from itself, by trying every way: slow and plain. */
function reachesItself(id: string, all: readonly TaskEdge[]): boolean {
  const reached = new Set<string>();
  const toVisit = [id];
  for (let from = toVisit.pop(); from !== undefined; from = toVisit.pop()) {
    for (const { beforeId, afterId } of all) {
      if (beforeId === from && !reached.has(afterId)) {
        reached.add(afterId);
        toVisit.push(afterId);
      }
    }
  }
  return reached.has(id);
}

describe('laws of the network', () => {
  it('a circle is found exactly when some task can be reached from itself, and it is one', () => {
    fc.assert(
      fc.property(network, ({ ids, edges: all }) => {
        const cycle = findCycle(all);
        expect(cycle !== null).toBe(ids.some((id) => reachesItself(id, all)));
        cycle?.forEach((id, index) => {
          expect(all).toContainEqual({
            beforeId: id,
            afterId: cycle[(index + 1) % cycle.length],
          });
        });
        if (cycle !== null) expect(new Set(cycle).size).toBe(cycle.length);
      }),
      { numRuns: 300 },
    );
  });

  it('an order puts every task once, after all it waits for; a circle is refused by name', () => {
    fc.assert(
      fc.property(network, ({ ids, edges: all }) => {
        if (findCycle(all) !== null) {
          expect(() => taskOrder(ids, all)).toThrow(/wait for one another: t\d/);
          return;
        }
        const order = taskOrder(ids, all);
        expect([...order].sort()).toEqual([...ids].sort());
        for (const { beforeId, afterId } of all) {
          expect(order.indexOf(beforeId)).toBeLessThan(order.indexOf(afterId));
        }
      }),
      { numRuns: 300 },
    );
  });
});

describe('the order of tasks', () => {
  it('is the one given wherever nothing speaks against it', () => {
    expect(taskOrder(['c', 'a', 'b'], [])).toEqual(['c', 'a', 'b']);
    expect(taskOrder(['wax', 'photograph', 'wash', 'dry'], edges('wash>dry', 'dry>wax'))).toEqual([
      'photograph',
      'wash',
      'dry',
      'wax',
    ]);
  });

  it('leaves tasks that are not listed out of account', () => {
    expect(taskOrder(['b', 'a'], edges('gone>b', 'a>gone'))).toEqual(['b', 'a']);
  });
});

describe('tasks that can be worked on now', () => {
  it('are the open ones with everything before them done or dropped', () => {
    const tasks = [
      { id: 'strip', state: 'DONE' },
      { id: 'replate', state: 'DROPPED' },
      { id: 'wash', state: 'IN_PROGRESS' },
      { id: 'repaint', state: 'NOT_STARTED' },
      { id: 'dry', state: 'NOT_STARTED' },
      { id: 'photograph', state: 'NOT_STARTED' },
    ] as const;
    const ready = readyTasks(
      tasks,
      edges('strip>wash', 'strip>repaint', 'replate>repaint', 'wash>dry', 'repaint>dry', 'x>wash'),
    );
    expect(ready.map(({ id }) => id)).toEqual(['wash', 'repaint', 'photograph']);
  });
});
