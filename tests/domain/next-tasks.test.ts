import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { estimateFromHistory } from '../../src/domain/estimates/estimateFromHistory.js';
import {
  rankNextTasks,
  type NextTaskFacts,
  type TaskToChoose,
} from '../../src/domain/nextTasks/rankNextTasks.js';

const task = (id: string, told: Partial<TaskToChoose> = {}): TaskToChoose => ({
  id,
  projectId: 'p',
  itemId: 'i',
  title: id,
  kind: 'REPAIR',
  state: 'NOT_STARTED',
  leftHours: 1,
  unearnedHours: 1,
  ...told,
});

const facts = (
  tasks: readonly TaskToChoose[],
  told: Partial<NextTaskFacts> = {},
): NextTaskFacts => ({
  tasks,
  edges: [],
  items: new Map([['i', { id: 'i', name: 'R-001', isReadyForUse: false, lacksOnlyChecks: false }]]),
  projects: new Map([['p', { id: 'p', title: 'Back on the shelf', budgetedHours: 10 }]]),
  heldBack: new Map(),
  ...told,
});

const order = (told: NextTaskFacts, minutes = 600) =>
  rankNextTasks(told, minutes).map(({ taskId }) => taskId);

describe('what next', () => {
  it('suggests nothing that waits, is over, or is held back', () => {
    const tasks = [
      task('first'),
      task('after'),
      task('done', { state: 'DONE' }),
      task('dropped', { state: 'DROPPED' }),
      task('no part'),
    ];
    const told = facts(tasks, {
      edges: [{ beforeId: 'first', afterId: 'after' }],
      heldBack: new Map([['no part', ['It needs 1 × 6146B; none lies ready.']]]),
    });
    expect(order(told)).toEqual(['first']);
  });

  it('puts what fits the time before what does not, however much that unlocks', () => {
    const tasks = [
      task('long', { leftHours: 5, unearnedHours: 9 }),
      task('short', { leftHours: 0.5 }),
    ];
    const told = facts(tasks, { items: new Map() });
    expect(rankNextTasks(told, 60).map(({ taskId, fits }) => [taskId, fits])).toEqual([
      ['short', true],
      ['long', false],
    ]);
    expect(order(told, 600)).toEqual(['long', 'short']);
  });

  it('puts what others wait for first, and says how many and how much', () => {
    const tasks = [task('alone'), task('gate'), task('behind', { leftHours: 3 }), task('last')];
    const told = facts(tasks, {
      items: new Map(),
      edges: [
        { beforeId: 'gate', afterId: 'behind' },
        { beforeId: 'behind', afterId: 'last' },
      ],
    });
    const [first] = rankNextTasks(told, 600);
    expect(first?.taskId).toBe('gate');
    expect(first?.reasons).toContainEqual({
      code: 'OPENS_TASKS',
      message: '2 tasks wait for it, with 4 h of work.',
      points: 10,
    });
  });

  it('says when a whole project stands still until it is done', () => {
    const tasks = [task('gate'), task('behind')];
    const told = facts(tasks, { edges: [{ beforeId: 'gate', afterId: 'behind' }] });
    expect(rankNextTasks(told, 600)[0]?.reasons.map(({ code }) => code)).toContain('FREES_PROJECT');
    const withAnother = facts([...tasks, task('other')], {
      edges: [{ beforeId: 'gate', afterId: 'behind' }],
    });
    const [gate] = rankNextTasks(withAnother, 600).filter(({ taskId }) => taskId === 'gate');
    expect(gate?.reasons.map(({ code }) => code)).not.toContain('FREES_PROJECT');
  });

  it('sends the testing of a set that lacks only checks ahead', () => {
    const items = new Map([
      ['i', { id: 'i', name: 'R-001', isReadyForUse: false, lacksOnlyChecks: true }],
    ]);
    const told = facts([task('paint'), task('check', { kind: 'TESTING' })], { items });
    expect(order(told)).toEqual(['check', 'paint']);
  });

  it('answers the same whatever the order of the edges, and names each doable task once', () => {
    const cases = fc.record({
      count: fc.integer({ min: 1, max: 12 }),
      pairs: fc.array(fc.tuple(fc.nat(11), fc.nat(11)), { maxLength: 20 }),
      minutes: fc.integer({ min: 1, max: 600 }),
    });
    fc.assert(
      fc.property(cases, ({ count, pairs, minutes }) => {
        const tasks = Array.from({ length: count }, (_, index) =>
          task(`t${index}`, { leftHours: (index % 4) + 0.5 }),
        );
        const edges = pairs
          .filter(([before, after]) => before < after && after < count)
          .map(([before, after]) => ({ beforeId: `t${before}`, afterId: `t${after}` }));
        const ranked = rankNextTasks(facts(tasks, { edges }), minutes);
        expect(rankNextTasks(facts(tasks, { edges: [...edges].reverse() }), minutes)).toEqual(
          ranked,
        );
        const waiting = new Set(edges.map(({ afterId }) => afterId));
        expect(ranked.map(({ taskId }) => taskId).sort()).toEqual(
          tasks
            .map(({ id }) => id)
            .filter((id) => !waiting.has(id))
            .sort(),
        );
        for (const { points, reasons } of ranked) {
          const sum = reasons.reduce((total, reason) => total + reason.points, 0);
          expect(points).toBeCloseTo(sum, 9);
          expect(reasons.length).toBeGreaterThan(0);
        }
      }),
    );
  });
});

// Common practice, no source: median and range of what the same work took.
describe('a duration taken from history', () => {
  const template = { optimisticHours: 2, likelyHours: 4, pessimisticHours: 10 };

  it('is the template’s own when there is none', () => {
    expect(estimateFromHistory(template, [])).toEqual(template);
  });

  it('is least, median and most from three on', () => {
    expect(estimateFromHistory(template, [9, 3, 5])).toEqual({
      optimisticHours: 3,
      likelyHours: 5,
      pessimisticHours: 9,
    });
  });

  it('keeps the spread of the template, in proportion, while there is one case', () => {
    expect(estimateFromHistory(template, [6])).toEqual({
      optimisticHours: 3,
      likelyHours: 6,
      pessimisticHours: 15,
    });
  });

  it('stays in order, always', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0.01, max: 500, noNaN: true }), { maxLength: 9 }),
        (worked) => {
          const { optimisticHours, likelyHours, pessimisticHours } = estimateFromHistory(
            template,
            worked,
          );
          expect(optimisticHours).toBeLessThanOrEqual(likelyHours);
          expect(likelyHours).toBeLessThanOrEqual(pessimisticHours);
        },
      ),
    );
  });
});
