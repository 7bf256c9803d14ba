import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { TaskToForecast } from '../../src/domain/estimates/forecastRemaining.js';
import { remainingHours } from '../../src/domain/estimates/remainingHours.js';
import { simulateProject } from '../../src/domain/forecast/simulateProject.js';
import { sumVariance } from '../../src/domain/forecast/sumVariance.js';
import type { TaskEdge } from '../../src/domain/network/taskEdge.js';
import { arbitraryTasks, estimateOf } from '../support/estimateStory.js';

const choices = { seed: 'bench', correlation: 0, trials: 2000 };
const open = (id: string, hours: [number, number, number], spentHours = 0): TaskToForecast => ({
  id,
  state: 'NOT_STARTED',
  estimate: estimateOf(...hours),
  spentHours,
});
/** Edges written as 'wash>dry'. */
const edges = (...written: string[]): TaskEdge[] =>
  written.map((edge) => {
    const [beforeId, afterId] = edge.split('>');
    return { beforeId: beforeId!, afterId: afterId! };
  });

/** Tasks with edges that run from earlier to later ones, so that there is no circle. */
const arbitraryNetwork = arbitraryTasks.chain((tasks) =>
  fc.array(fc.tuple(fc.nat(7), fc.nat(7)), { maxLength: 10 }).map((pairs) => ({
    tasks,
    edges: pairs
      .filter(([from, to]) => from < to && to < tasks.length)
      .map(([from, to]): TaskEdge => ({ beforeId: `task-${from}`, afterId: `task-${to}` })),
  })),
);
const arbitraryCorrelation = fc.constantFrom(0, 0.3, 0.7);

describe('a project by trials over its tasks', () => {
  it('of nothing to do is nothing', () => {
    const told = simulateProject([], [], choices);
    expect(told.hours).toMatchObject({ expectedHours: 0, p95Hours: 0 });
    expect(told.chain.expectedHours).toBe(0);
    expect(told.tornado).toEqual([]);
  });

  it('takes the sum of all hours, and the longest chain if hands were many', () => {
    const tasks = [open('strip', [2, 2, 2]), open('wash', [3, 3, 3]), open('tubes', [4, 4, 4])];
    const told = simulateProject(tasks, edges('strip>wash'), choices);
    expect(told.hours.p50Hours).toBe(9);
    expect(told.chain.p50Hours).toBe(5);
    const criticality = Object.fromEntries(told.tasks.map((task) => [task.id, task.criticality]));
    expect(criticality).toEqual({ strip: 1, tubes: 0, wash: 1 });
  });

  it('shares criticality between chains that may each be the longest', () => {
    const tasks = [open('dial', [1, 4, 7]), open('cabinet', [1, 4, 7]), open('test', [1, 1, 1])];
    const told = simulateProject(tasks, edges('dial>test', 'cabinet>test'), {
      ...choices,
      trials: 10_000,
    });
    const [cabinet, dial, test] = told.tasks.map(({ criticality }) => criticality);
    expect(test).toBe(1);
    expect(cabinet! + dial!).toBeCloseTo(1, 10);
    // Two alike: each is the longer in half of the trials, within five binomial standard errors.
    expect(Math.abs(dial! - 0.5)).toBeLessThan(5 * Math.sqrt(0.25 / 10_000));
  });

  it('lets a chain run through a task that is done', () => {
    const done: TaskToForecast = { ...open('dry', [1, 1, 1]), state: 'DONE' };
    const tasks = [open('wash', [3, 3, 3]), done, open('wax', [2, 2, 2])];
    const told = simulateProject(tasks, edges('wash>dry', 'dry>wax'), choices);
    expect(told.chain.p50Hours).toBe(5);
    expect(told.tasks.map(({ id }) => id)).toEqual(['wash', 'wax']);
  });

  it('refuses a circle by name, and choices out of bounds', () => {
    const tasks = [open('a', [1, 2, 3]), open('b', [1, 2, 3])];
    expect(() => simulateProject(tasks, edges('a>b', 'b>a'), choices)).toThrow(/wait for one/);
    expect(() => simulateProject(tasks, [], { ...choices, correlation: 1.1 })).toThrow(RangeError);
    expect(() => simulateProject(tasks, [], { ...choices, trials: 0.5 })).toThrow(RangeError);
    expect(() => simulateProject([tasks[0]!, tasks[0]!], [], choices)).toThrow(/listed twice/);
  });

  it('names the task whose uncertainty moves the p80 most, widest bar first', () => {
    const tasks = [open('sure', [5, 5, 5]), open('wild', [1, 5, 40]), open('mild', [1, 5, 9])];
    const { tornado, hours } = simulateProject(tasks, [], { ...choices, trials: 10_000 });
    expect(tornado.map(({ id }) => id)).toEqual(['wild', 'mild']);
    const [wild, mild] = tornado;
    expect(wild!.lowHours).toBeLessThan(hours.p80Hours);
    expect(wild!.highHours).toBeGreaterThan(hours.p80Hours);
    expect(wild!.p80IfCertainHours).toBeLessThan(mild!.p80IfCertainHours);
  });

  it('is wider the more a bad set is bad all over, with the same mean', () => {
    const tasks = Array.from({ length: 20 }, (_, index) => open(`t${index}`, [2, 4, 12]));
    const at = (correlation: number) =>
      simulateProject(tasks, [], { seed: 'bench', correlation, trials: 10_000 });
    const [apart, tied] = [at(0), at(0.5)];
    expect(tied.analytic.meanHours).toBe(apart.analytic.meanHours);
    expect(tied.analytic.varianceHours / apart.analytic.varianceHours).toBeGreaterThan(8);
    expect(tied.hours.p80Hours).toBeGreaterThan(apart.hours.p80Hours);
  });
});

describe('laws of a project’s forecast', () => {
  it('mean and variance of the trials agree with the formulas within five standard errors', () => {
    fc.assert(
      fc.property(arbitraryNetwork, arbitraryCorrelation, (network, correlation) => {
        const { hours, analytic } = simulateProject(network.tasks, network.edges, {
          seed: 'law',
          correlation,
          trials: 10_000,
        });
        const { standardError } = hours;
        expect(Math.abs(hours.expectedHours - analytic.meanHours)).toBeLessThanOrEqual(
          5 * standardError.meanHours + 1e-6 * analytic.meanHours,
        );
        // A few thousandths for the end of the series where correlated hours are very skewed.
        expect(Math.abs(hours.varianceHours - analytic.varianceHours)).toBeLessThanOrEqual(
          6 * standardError.varianceHours + 0.004 * analytic.varianceHours + 1e-9,
        );
      }),
      { numRuns: 60, seed: 20_261_125 },
    );
  });

  it('percentiles are in order and hours never below 0, the chain never above the sum', () => {
    fc.assert(
      fc.property(arbitraryNetwork, arbitraryCorrelation, (network, correlation) => {
        const { hours, chain, tasks, totals } = simulateProject(network.tasks, network.edges, {
          seed: 'law',
          correlation,
          trials: 200,
        });
        for (const { p50Hours, p80Hours, p95Hours } of [hours, chain]) {
          expect(p50Hours).toBeGreaterThanOrEqual(0);
          expect(p80Hours).toBeGreaterThanOrEqual(p50Hours);
          expect(p95Hours).toBeGreaterThanOrEqual(p80Hours);
        }
        expect(totals.every((total) => total >= 0)).toBe(true);
        expect(chain.p95Hours).toBeLessThanOrEqual(hours.p95Hours * (1 + 1e-12));
        for (const { criticality } of tasks) {
          expect(criticality).toBeGreaterThanOrEqual(0);
          expect(criticality).toBeLessThanOrEqual(1);
        }
        if (tasks.length > 0) {
          const some = tasks.reduce((sum, { criticality }) => sum + criticality, 0);
          expect(some).toBeGreaterThanOrEqual(1 - 1e-9);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('a further task never lowers the mean, finishing one never raises it', () => {
    fc.assert(
      fc.property(arbitraryNetwork, arbitraryCorrelation, ({ tasks }, correlation) => {
        if (tasks.length === 0) return;
        const at = (list: readonly TaskToForecast[]) =>
          simulateProject(list, [], { seed: 'law', correlation, trials: 200 }).hours.expectedHours;
        const [first, ...others] = tasks;
        const whole = at(tasks);
        expect(whole).toBeGreaterThanOrEqual(at(others));
        expect(at([{ ...first!, state: 'DONE' }, ...others])).toBeLessThanOrEqual(whole);
      }),
      { numRuns: 60 },
    );
  });

  it('the order of tasks and of edges changes nothing', () => {
    fc.assert(
      fc.property(arbitraryNetwork, arbitraryCorrelation, (network, correlation) => {
        const at = (tasks: readonly TaskToForecast[], links: readonly TaskEdge[]) => {
          const {
            hours,
            chain,
            tornado,
            tasks: told,
          } = simulateProject(tasks, links, {
            seed: 'law',
            correlation,
            trials: 200,
          });
          return {
            hours,
            chain,
            tornado,
            told: told.map(({ id, criticality }) => [id, criticality]),
          };
        };
        expect(at([...network.tasks].reverse(), [...network.edges].reverse())).toEqual(
          at(network.tasks, network.edges),
        );
      }),
      { numRuns: 60 },
    );
  });
});

// Held to figures as they came once, so that another machine or a new engine shows a difference.
it('gives the same answer on every machine', () => {
  const tasks = [open('a', [2, 4, 12]), open('b', [1, 3, 5], 2), open('c', [1, 2, 4], 9)];
  const { hours, chain } = simulateProject(tasks, edges('a>b'), {
    seed: 'the same everywhere',
    correlation: 0.4,
    trials: 10_000,
  });
  const shown = [
    hours.expectedHours,
    hours.p50Hours,
    hours.p80Hours,
    hours.p95Hours,
    chain.p80Hours,
  ];
  expect(shown.map((figure) => figure.toFixed(6))).toMatchInlineSnapshot(`
    [
      "6.537617",
      "6.290732",
      "8.473521",
      "10.672765",
      "7.964908",
    ]
  `);
});

describe('the variance of tied hours by formula', () => {
  const parts = [
    [1, 2, 3],
    [2, 4, 12],
  ].map(([a, m, b]) =>
    remainingHours({ state: 'NOT_STARTED', estimate: estimateOf(a!, m!, b!), spentHours: 0 }),
  );

  it('is the sum of the variances when nothing ties them', () => {
    expect(sumVariance(parts, 0)).toBe(parts[0]!.varianceHours + parts[1]!.varianceHours);
  });

  it('of one task twice, wholly tied, is four times its variance', () => {
    expect(sumVariance([parts[1]!, parts[1]!], 1) / parts[1]!.varianceHours).toBeCloseTo(4, 4);
  });
});
