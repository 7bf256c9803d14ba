import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dateOfDay, dayNumber } from '../../src/domain/dates/dayNumber.js';
import { awayDays } from '../../src/domain/pace/awayDays.js';
import { dateQuantile } from '../../src/domain/pace/dateQuantile.js';
import { finishDays, NEVER } from '../../src/domain/pace/finishDays.js';
import { keptWeeks, mondayOf } from '../../src/domain/pace/keptWeeks.js';
import { progressAhead } from '../../src/domain/pace/progressAhead.js';
import { pace } from '../../src/domain/pace/pace.js';

const never = () => false;

describe('days declared away', () => {
  it('include both ends, and no other year', () => {
    const isAway = awayDays([{ fromOn: '2026-07-06', untilOn: '2026-07-12', isYearly: false }]);
    const away = (date: string) => isAway(dayNumber(date));
    expect(['2026-07-05', '2026-07-06', '2026-07-12', '2026-07-13'].map(away)).toEqual([
      false,
      true,
      true,
      false,
    ]);
    expect(away('2027-07-06')).toBe(false);
  });

  it('come back every year where they are seasonal, over New Year too, and not before', () => {
    const isAway = awayDays([{ fromOn: '2025-12-20', untilOn: '2026-01-06', isYearly: true }]);
    const away = (date: string) => isAway(dayNumber(date));
    expect(['2024-12-24', '2026-01-06', '2026-01-07', '2026-12-19'].map(away)).toEqual([
      false,
      true,
      false,
      false,
    ]);
    expect(['2026-12-20', '2028-01-01', '2031-01-06', '2031-01-07'].map(away)).toEqual([
      true,
      true,
      true,
      false,
    ]);
  });
});

describe('the pace', () => {
  // Monday 2026-05-04; today is Wednesday 2026-06-03, whose own week is not over.
  const hours = new Map([
    ['2026-05-04', 6],
    ['2026-05-18', 3],
    ['2026-06-01', 99],
  ]);

  it('counts idle weeks since work began and leaves the week that is not over', () => {
    const told = pace(keptWeeks(hours, '2026-06-03', never, 52));
    expect(told.weeks.map((week) => week.hours)).toEqual([6, 0, 3, 0]);
    expect(told).toMatchObject({ meanHours: 2.25, medianHours: 1.5, idleWeekCount: 2 });
  });

  it('does not count weeks declared away, unless work was done in them', () => {
    const isAway = awayDays([{ fromOn: '2026-05-11', untilOn: '2026-05-24', isYearly: false }]);
    const told = pace(keptWeeks(hours, '2026-06-03', isAway, 52));
    expect(told.weeks.map((week) => week.hours)).toEqual([6, 3, 0]);
    expect(told.awayWeekCount).toBe(1);
  });

  it('looks back no further than it is told to, and knows when it knows nothing', () => {
    expect(keptWeeks(hours, '2026-06-03', never, 2).map((week) => week.hours)).toEqual([3, 0]);
    expect(pace(keptWeeks(new Map(), '2026-06-03', never, 52))).toMatchObject({
      meanHours: null,
      medianHours: null,
    });
  });

  it('finds the Monday of any day', () => {
    for (let day = -1000; day < 1000; day += 1) {
      const monday = mondayOf(day);
      expect(new Date(`${dateOfDay(monday)}T00:00:00Z`).getUTCDay()).toBe(1);
      expect(day - monday).toBeGreaterThanOrEqual(0);
      expect(day - monday).toBeLessThan(7);
    }
  });
});

const flat = (id: string, hours: number, trials = 200) => ({
  id,
  totals: new Float64Array(trials).fill(hours),
});
const today = dayNumber('2026-06-01');
const choices = { seed: 's', today, isAway: never, blockWeeks: 1 };

describe('when projects will be done', () => {
  it('at 7 hours in every week, 14 hours are done on the last day of the second', () => {
    const days = finishDays([flat('p', 14)], { ...choices, weekHours: [7, 7, 7] });
    expect(dateQuantile(days.get('p')!, 0.5)).toBe('2026-06-14');
    expect(dateQuantile(days.get('p')!, 0.8)).toBe('2026-06-14');
  });

  it('one after the other for the one person, in the order given', () => {
    const queue = [flat('first', 7), flat('second', 7), flat('third', 0)];
    const days = finishDays(queue, { ...choices, weekHours: [7] });
    const on = (id: string) => dateQuantile(days.get(id)!, 0.5);
    expect([on('first'), on('second'), on('third')]).toEqual([
      '2026-06-07',
      '2026-06-14',
      '2026-06-14',
    ]);
  });

  it('later by the days declared away', () => {
    const isAway = awayDays([{ fromOn: '2026-06-08', untilOn: '2026-06-21', isYearly: false }]);
    const days = finishDays([flat('p', 14)], { ...choices, isAway, weekHours: [7] });
    expect(dateQuantile(days.get('p')!, 0.5)).toBe('2026-06-28');
  });

  it('never, where twenty years of the pace are not enough', () => {
    const days = finishDays([flat('p', 5000)], { ...choices, weekHours: [0, 1] });
    expect(days.get('p')!.every((day) => day === NEVER)).toBe(true);
    expect(dateQuantile(days.get('p')!, 0.5)).toBeNull();
  });

  it('spread the more unevenly the weeks were kept', () => {
    const spread = (weekHours: number[]) => {
      const sorted = finishDays([flat('p', 40)], { ...choices, weekHours })
        .get('p')!
        .slice()
        .sort();
      return sorted[180]! - sorted[20]!;
    };
    expect(spread([4, 4, 4, 4])).toBe(0);
    expect(spread([0, 0, 0, 16])).toBeGreaterThan(21);
  });

  it('moving a project up brings it no later, and the last is done on the same day all the same', () => {
    const projects = fc.array(fc.integer({ min: 0, max: 60 }), { minLength: 2, maxLength: 5 });
    const weeks = fc.array(fc.integer({ min: 0, max: 12 }), { minLength: 1, maxLength: 9 });
    fc.assert(
      fc.property(projects, weeks, fc.nat(), (hours, kept, pick) => {
        const weekHours = [...kept, 5];
        const queue = hours.map((each, index) => flat(`p${index}`, each, 40));
        const place = 1 + (pick % (queue.length - 1));
        const moved = [...queue];
        moved.splice(place - 1, 2, queue[place]!, queue[place - 1]!);
        const given = { ...choices, weekHours, blockWeeks: 3 };
        const [before, after] = [finishDays(queue, given), finishDays(moved, given)];
        const last = (days: Map<string, Float64Array>, trial: number) =>
          Math.max(...[...days.values()].map((each) => each[trial]!));
        for (let trial = 0; trial < 40; trial += 1) {
          const day = (days: Map<string, Float64Array>, id: string) => days.get(id)![trial]!;
          expect(day(after, `p${place}`)).toBeLessThanOrEqual(day(before, `p${place}`));
          expect(day(after, `p${place - 1}`)).toBeGreaterThanOrEqual(day(before, `p${place - 1}`));
          expect(last(after, trial)).toBe(last(before, trial));
        }
      }),
      { numRuns: 60 },
    );
  });
});

describe('how far a project comes in the weeks ahead', () => {
  const ahead = (hours: Float64Array, weekHours: number[], blockWeeks = 1) => {
    const given = { ...choices, weekHours, blockWeeks };
    const queue = { id: 'p', totals: hours };
    const days = finishDays([queue], given).get('p')!;
    return { days, points: progressAhead(queue, days, given) };
  };

  it('at 7 hours in every week, half of 14 hours is done after the first', () => {
    const { points } = ahead(flat('p', 14).totals, [7]);
    const alike = (share: number) => ({
      byEightInTen: share,
      byFiveInTen: share,
      byTwoInTen: share,
    });
    expect(points).toEqual([
      { day: today, finished: 0, ...alike(0) },
      { day: today + 6, finished: 0, ...alike(0.5) },
      { day: today + 13, finished: 1, ...alike(1) },
    ]);
  });

  it('has nothing to tell when nothing is left', () => {
    expect(ahead(flat('p', 0).totals, [7]).points).toEqual([]);
    expect(ahead(new Float64Array(), [7]).points).toEqual([]);
  });

  it('looks twenty years ahead at the most, in 52 steps', () => {
    const { points } = ahead(flat('p', 5000).totals, [1]);
    expect(points).toHaveLength(53);
    expect(points.at(-1)).toMatchObject({ day: today + 7 * 1040 - 1, finished: 0 });
    expect(points.at(-1)!.byFiveInTen).toBeCloseTo(1040 / 5000, 12);
  });

  it('is the same trials as the finish date: each day’s share is that of the sorted days', () => {
    const weeks = fc.array(fc.integer({ min: 0, max: 12 }), { minLength: 1, maxLength: 9 });
    const totals = fc.array(fc.integer({ min: 0, max: 300 }), { minLength: 1, maxLength: 60 });
    fc.assert(
      fc.property(totals, weeks, fc.integer({ min: 1, max: 4 }), (hours, kept, blockWeeks) => {
        const { days, points } = ahead(Float64Array.from(hours), [...kept, 2], blockWeeks);
        const sorted = days.slice().sort();
        const doneBy = (tenths: number) => sorted[Math.ceil((tenths * hours.length) / 10) - 1]!;
        for (const [index, point] of points.entries()) {
          const until = index === 0 ? hours.map((each) => (each > 0 ? NEVER : 0)) : [...days];
          const done = until.filter((day) => day <= point.day).length;
          expect(point.finished).toBe(done / hours.length);
          expect(point.byEightInTen).toBeLessThanOrEqual(point.byFiveInTen);
          expect(point.byFiveInTen).toBeLessThanOrEqual(point.byTwoInTen);
          if (index === 0) continue;
          expect(point.byEightInTen === 1).toBe(doneBy(8) <= point.day);
          expect(point.byFiveInTen === 1).toBe(doneBy(5) <= point.day);
          expect(point.byTwoInTen === 1).toBe(doneBy(2) <= point.day);
          expect(point.byEightInTen).toBeGreaterThanOrEqual(points[index - 1]!.byEightInTen);
        }
        expect(points.length).toBeLessThanOrEqual(53);
      }),
      { numRuns: 100 },
    );
  });
});
