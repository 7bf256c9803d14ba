import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { burnUp } from '../../src/domain/earnedValue/burnUp.js';
import { earnedAgainstPlan } from '../../src/domain/earnedValue/earnedAgainstPlan.js';
import { planChanges } from '../../src/domain/earnedValue/planChanges.js';
import { plannedDates } from '../../src/domain/earnedValue/plannedDates.js';
import { plannedHours } from '../../src/domain/earnedValue/plannedHours.js';
import type { TaskRecord, TaskRevision } from '../../src/domain/earnedValue/taskRecord.js';
import { awayDays } from '../../src/domain/pace/awayDays.js';
import { estimateOf } from '../support/estimateStory.js';

const never = () => false;
const work = (...hours: number[]) =>
  hours.map((budgetHours, index) => ({ taskId: `t${index}`, budgetHours }));

describe('a plan on the calendar', () => {
  it('puts tasks one after the other, several on a day and one over many days', () => {
    const plan = plannedDates(work(1, 1, 5, 7), {
      startsOn: '2026-06-01',
      hoursPerWeek: 14,
      isAway: never,
    });
    expect(
      plan.map(({ plannedStartOn, plannedFinishOn }) => [plannedStartOn, plannedFinishOn]),
    ).toEqual([
      ['2026-06-01', '2026-06-01'],
      ['2026-06-01', '2026-06-01'],
      ['2026-06-02', '2026-06-04'],
      ['2026-06-04', '2026-06-07'],
    ]);
  });

  it('plans nothing on days away, and refuses to plan for ever', () => {
    const away = { fromOn: '2026-06-01', untilOn: '2026-06-10', isYearly: false };
    const [task] = plannedDates(work(2), {
      startsOn: '2026-06-01',
      hoursPerWeek: 14,
      isAway: awayDays([away]),
    });
    expect(task).toMatchObject({ plannedStartOn: '2026-06-11', plannedFinishOn: '2026-06-11' });
    const slow = { startsOn: '2026-06-01', hoursPerWeek: 0.01, isAway: never };
    expect(() => plannedDates(work(1000), slow)).toThrow(/a hundred years/);
    const always = { ...slow, hoursPerWeek: 10, isAway: () => true };
    expect(() => plannedDates(work(1), always)).toThrow(/a hundred years/);
  });

  it('wants nothing before it starts and everything when it ends, and never less later', () => {
    const budgets = fc.array(fc.integer({ min: 0, max: 400 }), { minLength: 1, maxLength: 8 });
    fc.assert(
      fc.property(budgets, fc.integer({ min: 1, max: 168 }), (tenths, hoursPerWeek) => {
        const plan = plannedDates(work(...tenths.map((tenth) => tenth / 10)), {
          startsOn: '2026-02-27',
          hoursPerWeek,
          isAway: never,
        });
        const whole = tenths.reduce((sum, tenth) => sum + tenth / 10, 0);
        expect(plannedHours(plan, '2026-02-26')).toBe(0);
        expect(plannedHours(plan, plan.at(-1)!.plannedFinishOn)).toBeCloseTo(whole, 6);
        const days = ['2026-02-27', '2026-03-01', '2026-03-15', '2026-06-01', '2027-01-01'];
        days.slice(1).forEach((day, index) => {
          expect(plannedHours(plan, day)).toBeGreaterThanOrEqual(plannedHours(plan, days[index]!));
        });
      }),
    );
  });
});

describe('from the kept plan to what it takes', () => {
  it('adds up, whatever was added, dropped, overrun or saved', () => {
    const hours = fc.integer({ min: 0, max: 500 }).map((tenths) => tenths / 10);
    const tasks = fc.array(
      fc.record({
        baselineHours: fc.option(hours),
        ownHours: hours,
        isDropped: fc.boolean(),
        spentHours: hours,
        remainingHours: hours,
      }),
      { maxLength: 12 },
    );
    fc.assert(
      fc.property(tasks, (rows) => {
        const bridge = planChanges(
          rows.map((row, index) => ({
            ...row,
            taskId: `t${index}`,
            remainingHours: row.isDropped ? 0 : row.remainingHours,
          })),
        );
        const { baselineHours, scopeGrowthHours, overrunHours } = bridge;
        expect(baselineHours + scopeGrowthHours + overrunHours).toBeCloseTo(
          bridge.expectedAtCompletionHours,
          6,
        );
        const parts = bridge.changes.reduce((sum, change) => sum + change.hours, 0);
        // Changes of less than a minute are not listed.
        expect(Math.abs(parts - scopeGrowthHours - overrunHours)).toBeLessThan(12 / 60);
      }),
    );
  });
});

const day = 24 * 60 * 60 * 1000;
const at = (days: number) => Date.UTC(2026, 5, 1) + days * day;
const revision = (days: number, told: Partial<TaskRevision> = {}): TaskRevision => ({
  atMs: at(days),
  state: 'NOT_STARTED',
  estimate: estimateOf(10, 10, 10),
  earningRule: { kind: 'ZERO_HUNDRED' },
  ...told,
});
const task = (
  id: string,
  revisions: TaskRevision[],
  told: Partial<TaskRecord> = {},
): TaskRecord => ({
  id,
  revisions,
  steps: [],
  worked: [],
  ...told,
});

describe('hours over time', () => {
  const days = [0, 1, 2, 3].map((index) => ({
    on: `2026-06-0${index + 1}`,
    endsAtMs: at(index + 1),
  }));

  it('follow what was known then: added, re-estimated, begun, done, reopened', () => {
    const done = revision(1.5, { state: 'DONE' });
    const records = [
      task('a', [revision(0.5), done, revision(2.5, { state: 'IN_PROGRESS' })]),
      task('b', [revision(1.2), revision(3.2, { estimate: estimateOf(30, 30, 30) })]),
    ];
    const points = burnUp(
      records,
      new Map([
        ['a', 10],
        ['b', 10],
      ]),
      null,
      days,
    );
    expect(points.map((point) => point.scopeHours)).toEqual([10, 20, 20, 40]);
    expect(points.map((point) => point.earnedHours)).toEqual([0, 10, 0, 0]);
    expect(points.every((point) => point.plannedHours === null)).toBe(true);
  });

  it('earn step by step, each on its day', () => {
    const steps = [
      { name: 'left', weight: 1, doneAtMs: at(0.5) },
      { name: 'right', weight: 3, doneAtMs: at(2.5) },
    ];
    const stepped = revision(0, { earningRule: { kind: 'WEIGHTED_STEPS' }, state: 'IN_PROGRESS' });
    const points = burnUp([task('a', [stepped], { steps })], new Map([['a', 10]]), null, days);
    expect(points.map((point) => point.earnedHours)).toEqual([2.5, 2.5, 10, 10]);
  });

  it('count a session up to the moment that is looked at', () => {
    const worked = [{ startedAtMs: at(1) - 3_600_000, endedAtMs: at(1) + 3_600_000 }];
    const points = burnUp([task('a', [revision(0)], { worked })], new Map(), null, days);
    expect(points.map((point) => point.spentHours)).toEqual([1, 2, 2, 2]);
  });
});

describe('against the kept plan', () => {
  const plan = plannedDates(
    [
      { taskId: 'a', budgetHours: 7 },
      { taskId: 'b', budgetHours: 7 },
    ],
    { startsOn: '2026-06-01', hoursPerWeek: 7, isAway: never },
  );
  const now = { nowMs: at(7), today: '2026-06-07' };

  it('a task added since makes the project neither early nor late', () => {
    const done = [revision(0), revision(2, { state: 'DONE' })];
    const planned = [task('a', done), task('b', [revision(0)])];
    const alone = earnedAgainstPlan(planned, plan, now).amounts;
    expect(alone).toMatchObject({ budgetAtCompletion: 14, earnedValue: 7, plannedValue: 7 });
    const added = task('c', [revision(3), revision(4, { state: 'DONE' })]);
    const { amounts } = earnedAgainstPlan([...planned, added], plan, now);
    expect(amounts).toMatchObject({ budgetAtCompletion: 24, earnedValue: 17, plannedValue: 17 });
  });

  it('a dropped task has no budget and earns nothing, but what it took was spent', () => {
    const worked = [{ startedAtMs: at(1), endedAtMs: at(1) + 2 * 3_600_000 }];
    const dropped = task('a', [revision(0), revision(2, { state: 'DROPPED' })], { worked });
    const { amounts, bridge } = earnedAgainstPlan([dropped, task('b', [revision(0)])], plan, now);
    expect(amounts).toEqual({
      budgetAtCompletion: 7,
      earnedValue: 0,
      actualCost: 2,
      plannedValue: 0,
    });
    expect(bridge).toMatchObject({ baselineHours: 14, scopeGrowthHours: -7 });
  });
});
