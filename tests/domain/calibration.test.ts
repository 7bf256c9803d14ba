import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { backTest } from '../../src/domain/calibration/backTest.js';
import {
  calibration as calibrationOf,
  multiplierOf,
  ratedTask,
} from '../../src/domain/calibration/calibration.js';
import type { FinishedTask } from '../../src/domain/calibration/finishedTask.js';
import { remainingHours } from '../../src/domain/estimates/remainingHours.js';
import { seededRandom } from '../../src/domain/estimates/seededRandom.js';
import { estimateOf } from '../support/estimateStory.js';

const calibration = (history: readonly FinishedTask[]) => calibrationOf(history.map(ratedTask));

/** A task estimated at 5 hours flat that took so many. */
const took = (actualHours: number, kind = 'CLEANING', index = 0): FinishedTask => ({
  id: `${kind}-${index}`,
  kind,
  estimate: estimateOf(5, 5, 5),
  actualHours,
  finishedAtMs: index,
});

describe('what finished tasks say of estimates', () => {
  it('is nothing without history: estimates stay as they are', () => {
    const told = calibration([]);
    expect(told).toMatchObject({ taskCount: 0, rawRatio: null, weight: 0, multiplier: 1 });
    expect(multiplierOf(told, 'CLEANING')).toBe(1);
    expect(told.multiplierHigh).toBeGreaterThan(1.5);
  });

  it('is little after one task, and all but its own ratio after hundreds', () => {
    const once = calibration([took(10)]);
    expect(once.rawRatio).toBeCloseTo(2, 10);
    expect(once.multiplier).toBeGreaterThan(1);
    expect(once.multiplier).toBeLessThan(1.3);
    const often = calibration(Array.from({ length: 400 }, (_, index) => took(10, 'REPAIR', index)));
    expect(often.multiplier).toBeGreaterThan(1.98);
    expect(often.weight).toBeGreaterThan(0.99);
  });

  it('draws a kind with little history towards the collection, not towards 1', () => {
    const history = [
      ...Array.from({ length: 30 }, (_, index) => took(10, 'REPAIR', index)),
      ...Array.from({ length: 30 }, (_, index) => took(5, 'CLEANING', index)),
      took(5, 'CABINET'),
    ];
    const told = calibration(history);
    const kind = (name: string) => told.kinds.find((known) => known.kind === name)!;
    expect(kind('REPAIR').multiplier).toBeGreaterThan(1.8);
    expect(kind('CLEANING').multiplier).toBeLessThan(1.1);
    expect(kind('CABINET').weight).toBeLessThan(kind('CLEANING').weight);
    expect(kind('CABINET').multiplier).toBeGreaterThan(kind('CLEANING').multiplier);
    expect(multiplierOf(told, 'ALIGNMENT')).toBe(told.multiplier);
  });

  it('takes a ratio beyond ten to one for ten: a slip of recording', () => {
    expect(calibration([took(5000)]).rawRatio).toBeCloseTo(10, 10);
  });

  it('lies between 1 and the raw ratio, and the order of tasks changes nothing', () => {
    const histories = fc.array(
      fc.tuple(fc.integer({ min: 1, max: 400 }), fc.constantFrom('REPAIR', 'TUBES', 'CABINET')),
      { minLength: 1, maxLength: 20 },
    );
    fc.assert(
      fc.property(histories, (rows) => {
        const history = rows.map(([tenths, kind], index) => took(tenths / 10, kind, index));
        const told = calibration(history);
        const [low, high] = [Math.min(1, told.rawRatio!), Math.max(1, told.rawRatio!)];
        expect(told.multiplier).toBeGreaterThanOrEqual(low * (1 - 1e-9));
        expect(told.multiplier).toBeLessThanOrEqual(high * (1 + 1e-9));
        expect(calibration([...history].reverse()).multiplier).toBeCloseTo(told.multiplier, 9);
      }),
    );
  });
});

/** Histories drawn from a known truth: hours of the estimate's own distribution times a factor. */
function drawn(count: number, factor: number, seed: string): FinishedTask[] {
  const random = seededRandom(seed);
  return Array.from({ length: count }, (_, index) => {
    const optimistic = 1 + 4 * random.nextUniform();
    const likely = optimistic + 3 * random.nextUniform();
    const estimate = estimateOf(optimistic, likely, likely + 1 + 8 * random.nextUniform());
    const whole = remainingHours({ state: 'NOT_STARTED', estimate, spentHours: 0 });
    return {
      id: `task-${index}`,
      kind: index % 2 === 0 ? 'REPAIR' : 'CLEANING',
      estimate,
      actualHours: factor * whole.hoursAt(random.nextUniform()),
      finishedAtMs: index,
    };
  });
}

describe('the back-test', () => {
  it('says nothing of fewer than ten tasks', () => {
    expect(backTest([])).toMatchObject({ taskCount: 0, verdict: 'TOO_FEW', curve: [] });
    expect(backTest(drawn(9, 1, 'few')).verdict).toBe('TOO_FEW');
  });

  it.each(['first', 'second', 'third'])('finds honest estimates as stated (%s history)', (seed) => {
    const { verdict, curve } = backTest(drawn(200, 1, seed));
    expect(verdict).toBe('AS_STATED');
    for (const { stated, observed, standardError } of curve) {
      expect(Math.abs(observed - stated)).toBeLessThan(4 * standardError);
    }
  });

  it.each([
    [1.5, 'late'],
    [0.6, 'early'],
  ])(
    'recovers a truth of %d times the estimates, which makes the forecasts better',
    (factor, seed) => {
      const history = drawn(200, factor, seed);
      const told = calibration(history);
      expect(told.multiplierLow).toBeLessThan(factor);
      expect(told.multiplierHigh).toBeGreaterThan(factor);
      const { pinballHours, uncalibratedPinballHours, curve } = backTest(history);
      expect(pinballHours).toBeLessThan(uncalibratedPinballHours);
      const p80 = curve.find(({ stated }) => stated === 0.8)!;
      expect(Math.abs(p80.observed - 0.8)).toBeLessThan(4 * p80.standardError);
    },
  );

  it('calls estimates that are far too narrow too optimistic', () => {
    const wild = Array.from({ length: 60 }, (_, index): FinishedTask => ({
      ...took(index % 2 === 0 ? 30 : 1, 'REPAIR', index),
      estimate: estimateOf(4.9, 5, 5.1),
    }));
    expect(backTest(wild).verdict).toBe('TOO_OPTIMISTIC');
  });

  it('learns only from what was finished before', () => {
    const history = drawn(40, 2, 'order');
    const early = backTest(history.slice(0, 20));
    const later = history.slice(20).map((task) => ({ ...task, actualHours: 100 }));
    const both = backTest([...later, ...history.slice(0, 20)]);
    expect(both.taskCount).toBe(40);
    // The first twenty were judged alike: their share of the loss is the same.
    const loss = (test: { pinballHours: number; taskCount: number }) =>
      test.pinballHours * test.taskCount;
    expect(loss(both)).toBeGreaterThan(loss(early));
    expect(loss(backTest(history.slice(0, 20).reverse()))).toBeCloseTo(loss(early), 9);
  });
});
