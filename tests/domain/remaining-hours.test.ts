import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { estimateProblems } from '../../src/domain/estimates/estimateProblems.js';
import {
  forecastRemaining,
  type TaskToForecast,
} from '../../src/domain/estimates/forecastRemaining.js';
import { lognormalResidual } from '../../src/domain/estimates/lognormalResidual.js';
import { quantileOfSorted } from '../../src/domain/estimates/quantileOfSorted.js';
import { remainingHours } from '../../src/domain/estimates/remainingHours.js';
import { seededRandom } from '../../src/domain/estimates/seededRandom.js';
import { arbitraryEstimate, arbitraryTasks, estimateOf } from '../support/estimateStory.js';

describe('a three-point estimate', () => {
  const found = (...hours: [number, number, number]) =>
    estimateProblems(estimateOf(...hours)).map(({ code, path }) => `${code} ${path.join('.')}`);

  it('is in order from 0 hours up, a single figure included', () => {
    expect(found(0, 1, 2)).toEqual([]);
    expect(found(3, 3, 3)).toEqual([]);
    expect(found(1, 2, 10_000)).toEqual([]);
  });

  it('is told everything that is wrong with it at once', () => {
    expect(found(-1, NaN, 10_001)).toEqual([
      'HOURS_NEGATIVE optimisticHours',
      'HOURS_NOT_A_NUMBER likelyHours',
      'HOURS_ABSURD pessimisticHours',
    ]);
    expect(found(3, 2, 1)).toEqual([
      'HOURS_OUT_OF_ORDER likelyHours',
      'HOURS_OUT_OF_ORDER pessimisticHours',
    ]);
    expect(found(0, 0, 0)).toEqual(['HOURS_ALL_ZERO pessimisticHours']);
    expect(found(0, 1, Infinity)).toEqual(['HOURS_ABSURD pessimisticHours']);
  });
});

describe('hours left on one task', () => {
  const left = (spentHours: number, hours: [number, number, number] = [2, 4, 12]) =>
    remainingHours({ state: 'IN_PROGRESS', estimate: estimateOf(...hours), spentHours });

  it('are the whole estimate before it is begun', () => {
    expect(left(0).meanHours).toBeCloseTo(5, 7);
    expect(left(0).varianceHours).toBeCloseTo(3, 6);
  });

  it('fall hour by hour until the optimistic figure is reached', () => {
    expect(left(1.5).meanHours).toBeCloseTo(3.5, 7);
    expect(left(2).meanHours).toBeCloseTo(3, 7);
  });

  it('fall by less than an hour an hour after it: what did not finish it may not have been easy', () => {
    const means = [2, 4, 6, 8, 10].map((spentHours) => left(spentHours).meanHours);
    means.slice(1).forEach((mean, index) => {
      expect(mean).toBeLessThan(means[index]!);
      expect(mean).toBeGreaterThan(means[index]! - 2);
    });
  });

  it('do not end when the pessimistic figure is passed: the estimate is refuted', () => {
    for (const spentHours of [12, 20, 500]) {
      const { meanHours, varianceHours } = lognormalResidual(5, Math.sqrt(3) / 5, spentHours);
      expect(left(spentHours)).toMatchObject({ kind: 'REFUTED', meanHours, varianceHours });
      expect(meanHours).toBeGreaterThan(1);
    }
  });

  it('of a single figure are certain until it is passed, then far from it', () => {
    expect(left(2, [3, 3, 3])).toMatchObject({ meanHours: 1, varianceHours: 0 });
    expect(left(3, [3, 3, 3]).kind).toBe('REFUTED');
    expect(left(5, [3, 3, 3]).meanHours).toBeGreaterThan(0.25);
  });

  it.each(['DONE', 'DROPPED'] as const)('are none when the task is %s', (state) => {
    const none = remainingHours({ state, estimate: estimateOf(2, 4, 12), spentHours: 1 });
    expect(none).toMatchObject({ kind: 'FINISHED', meanHours: 0, varianceHours: 0 });
    expect(none.hoursAt(0.5)).toBe(0);
  });

  it('are refused for an estimate out of order or hours that are no number', () => {
    expect(() => left(1, [4, 2, 12])).toThrow(/below the optimistic/);
    expect(() => left(NaN)).toThrow(RangeError);
    expect(() => left(-1)).toThrow(RangeError);
  });

  it('are never 0 nor less while it is unfinished', () => {
    fc.assert(
      fc.property(
        arbitraryEstimate,
        fc.double({ min: 0, max: 3, noNaN: true }),
        fc.string(),
        (estimate, share, seed) => {
          const spentHours = share * estimate.pessimisticHours;
          const remaining = remainingHours({ state: 'IN_PROGRESS', estimate, spentHours });
          const random = seededRandom(seed);
          expect(remaining.meanHours).toBeGreaterThan(0);
          expect(remaining.varianceHours).toBeGreaterThanOrEqual(0);
          for (let draw = 0; draw < 20; draw += 1) {
            const hours = remaining.hoursAt(random.nextUniform());
            expect(hours).toBeGreaterThan(0);
            if (remaining.kind === 'WITHIN_ESTIMATE') {
              expect(hours).toBeLessThanOrEqual(
                (estimate.pessimisticHours - spentHours) * (1 + 1e-9),
              );
            }
          }
        },
      ),
    );
  });
});

describe('a forecast of hours left', () => {
  const forecast = (tasks: readonly TaskToForecast[], trials = 2000) =>
    forecastRemaining(tasks, { seed: 'bench', trials });

  it('of nothing to do is nothing', () => {
    const done = { id: 't', state: 'DONE', estimate: estimateOf(1, 2, 3), spentHours: 9 } as const;
    for (const tasks of [[], [done]]) {
      expect(forecast(tasks)).toMatchObject({ expectedHours: 0, p95Hours: 0, openTaskCount: 0 });
    }
  });

  it('says which tasks it leaves out and which estimates were refuted', () => {
    const open = { state: 'IN_PROGRESS', spentHours: 5 } as const;
    const told = forecast([
      { ...open, id: 'unknown', estimate: null },
      { ...open, id: 'late', estimate: estimateOf(1, 2, 4) },
      { ...open, id: 'fine', estimate: estimateOf(4, 6, 9) },
    ]);
    expect(told).toMatchObject({
      openTaskCount: 3,
      unestimatedTaskIds: ['unknown'],
      refutedTaskIds: ['late'],
    });
    expect(told.assumptions.join(' ')).toMatch(/independently.*lognormal.*no estimate/s);
  });

  it('refuses a task listed twice, and trials that are none', () => {
    const task = { id: 't', state: 'NOT_STARTED', estimate: null, spentHours: 0 } as const;
    expect(() => forecast([task, task])).toThrow('Task t is listed twice.');
    expect(() => forecast([], 0)).toThrow(/trials/);
  });

  it('is the same for the same seed whatever the order of the rows', () => {
    const rows = arbitraryTasks.chain((tasks) =>
      fc.tuple(
        fc.constant(tasks),
        fc.shuffledSubarray(tasks, { minLength: tasks.length, maxLength: tasks.length }),
      ),
    );
    fc.assert(
      fc.property(rows, ([tasks, shuffled]) => {
        expect(forecast(shuffled, 200)).toEqual(forecast(tasks, 200));
      }),
      { numRuns: 50 },
    );
  });

  it('differs for another seed', () => {
    const tasks: TaskToForecast[] = [
      { id: 't', state: 'NOT_STARTED', estimate: estimateOf(1, 2, 9), spentHours: 0 },
    ];
    expect(forecastRemaining(tasks, { seed: 'other', trials: 2000 }).p80Hours).not.toBe(
      forecast(tasks).p80Hours,
    );
  });

  it('has its percentiles in order, and a further task never lowers one of its figures', () => {
    fc.assert(
      fc.property(arbitraryTasks, (tasks) => {
        const whole = forecast(tasks, 200);
        expect(whole.p50Hours).toBeGreaterThanOrEqual(0);
        expect(whole.p80Hours).toBeGreaterThanOrEqual(whole.p50Hours);
        expect(whole.p95Hours).toBeGreaterThanOrEqual(whole.p80Hours);
        const fewer = forecast(tasks.slice(1), 200);
        expect(whole.expectedHours).toBeGreaterThanOrEqual(fewer.expectedHours);
        expect(whole.p50Hours).toBeGreaterThanOrEqual(fewer.p50Hours);
        expect(whole.p95Hours).toBeGreaterThanOrEqual(fewer.p95Hours);
        expect(whole.analytic.meanHours).toBeGreaterThanOrEqual(fewer.analytic.meanHours);
      }),
      { numRuns: 60 },
    );
  });

  it('has a mean within five standard errors of the formula', () => {
    fc.assert(
      fc.property(arbitraryTasks, (tasks) => {
        const { expectedHours, analytic, standardErrorHours } = forecast(tasks, 10_000);
        expect(Math.abs(expectedHours - analytic.meanHours)).toBeLessThanOrEqual(
          5 * standardErrorHours + 1e-6 * analytic.meanHours,
        );
      }),
      // A fixed run: five standard errors are passed by chance once in two million.
      { numRuns: 40, seed: 20_240_502 },
    );
  });

  it('of many like tasks comes close to the normal curve', () => {
    const tasks = Array.from({ length: 100 }, (_, index): TaskToForecast => ({
      id: `task-${index}`,
      state: 'NOT_STARTED',
      estimate: estimateOf(2, 4, 12),
      spentHours: 0,
    }));
    // Sum of 100: mean 500, variance 300; normal quantiles .8416 and 1.6449 from the usual tables.
    const { p50Hours, p80Hours, p95Hours } = forecast(tasks, 10_000);
    expect(Math.abs(p50Hours - 500)).toBeLessThan(1.2);
    expect(Math.abs(p80Hours - (500 + 0.8416 * Math.sqrt(300)))).toBeLessThan(1.2);
    expect(Math.abs(p95Hours - (500 + 1.6449 * Math.sqrt(300)))).toBeLessThan(1.8);
  });
});

it('a quantile lies on the line between its neighbours (Hyndman and Fan, definition 7)', () => {
  const sorted = Float64Array.of(10, 20, 30, 40, 50);
  expect(quantileOfSorted(sorted, 0.5)).toBe(30);
  expect(quantileOfSorted(sorted, 0.8)).toBeCloseTo(42, 12);
  expect(quantileOfSorted(sorted, 1)).toBe(50);
  expect(quantileOfSorted(Float64Array.of(7), 0.95)).toBe(7);
});
