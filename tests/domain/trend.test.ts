import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { comparableSeries } from '../../src/domain/trend/comparableSeries.js';
import { trendOf } from '../../src/domain/trend/trendOf.js';
import { YEAR_MS } from '../../src/domain/trend/theilSen.js';

const yearly = (values: readonly number[]) =>
  values.map((value, index) => ({ atMs: index * YEAR_MS, value }));
const none = { lower: null, upper: null };

describe('a trend', () => {
  it('is never claimed from fewer than five instants, and says how many are missing', () => {
    expect(trendOf(yearly([5, 4, 3]), none)).toEqual({ kind: 'TOO_FEW', instants: 3, missing: 2 });
    const atOnce = [5, 4, 3, 2, 1].map((value) => ({ atMs: 0, value }));
    expect(trendOf(atOnce, none)).toEqual({ kind: 'TOO_FEW', instants: 1, missing: 4 });
  });

  it('says when a falling transconductance reaches its limit, as an interval', () => {
    const trend = trendOf(yearly([6, 5.8, 5.7, 5.4, 5.3, 5]), { lower: 4.2, upper: null });
    expect(trend).toMatchObject({ kind: 'FALLING', isLimitNear: false });
    if (trend.kind === 'TOO_FEW' || !trend.crossing) throw new Error('no crossing');
    const { centralMs, earliestMs, latestMs, end } = trend.crossing;
    expect(end).toBe('LOWER');
    expect(centralMs / YEAR_MS).toBeCloseTo(2.5 + (5.55 - 4.2) / 0.2, 6);
    expect(earliestMs).toBeLessThan(centralMs);
    expect(latestMs).toBeGreaterThan(centralMs);
  });

  it('makes a limit near that is reached within a year of the last reading', () => {
    const near = trendOf(yearly([6, 5.5, 5, 4.6, 4.3]), { lower: 4.2, upper: null });
    expect(near).toMatchObject({ kind: 'FALLING', isLimitNear: true });
    const otherWay = trendOf(yearly([6, 5.5, 5, 4.6, 4.3]), { lower: null, upper: 7 });
    expect(otherWay).toMatchObject({ crossing: null, isLimitNear: false });
  });

  it('is none in readings that only scatter, and one wild reading makes none', () => {
    expect(trendOf(yearly([5, 5.2, 4.9, 5.1, 5, 5.2, 4.9]), none).kind).toBe('NONE');
    expect(trendOf(yearly([5, 5, 5, 5, 5, 5]), none)).toMatchObject({ kind: 'NONE' });
    expect(trendOf(yearly([5, 5.1, 50, 5, 5.1, 5, 5.05]), none).kind).toBe('NONE');
  });

  it('turns round when the values do, and does not hang on the order of the input', () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.integer({ min: 1, max: 2000 }), { minLength: 5, maxLength: 15 }),
        fc.array(fc.integer({ min: -500, max: 500 }), { minLength: 15, maxLength: 15 }),
        (months, values) => {
          const points = months.map((month, index) => ({
            atMs: (month * YEAR_MS) / 12,
            value: values[index] ?? 0,
          }));
          const trend = trendOf(points, none);
          expect(trendOf([...points].reverse(), none)).toEqual(trend);
          const turned = trendOf(
            points.map(({ atMs, value }) => ({ atMs, value: -value })),
            none,
          );
          if (trend.kind === 'TOO_FEW' || turned.kind === 'TOO_FEW') throw new Error('too few');
          expect(turned.line.slopePerYear).toBeCloseTo(-trend.line.slopePerYear, 9);
          expect(turned.test.s).toBe(-trend.test.s || 0);
          const { interval, slopePerYear } = trend.line;
          if (interval) {
            expect(interval.lowPerYear).toBeLessThanOrEqual(slopePerYear + 1e-9);
            expect(interval.highPerYear).toBeGreaterThanOrEqual(slopePerYear - 1e-9);
          }
        },
      ),
    );
  });
});

describe('a series over a change of instrument', () => {
  const reading = (year: number, value: number, instrument: string | null) => ({
    readingId: String(year),
    atMs: year * YEAR_MS,
    value,
    instrument,
  });
  const readings = [
    reading(3, 50, 'new bridge'),
    reading(1, 100, 'old bridge'),
    reading(2, 98, 'old bridge'),
    reading(4, 49, 'new bridge'),
  ];

  it('begins after the change', () => {
    const series = comparableSeries(readings, []);
    expect(series.points.map(({ value }) => value)).toEqual([50, 49]);
    expect(series.brokenBy?.readingId).toBe('2');
  });

  it('goes on when a comparison factor is given, which holds both ways', () => {
    const factor = { from: 'old bridge', to: 'new bridge', factor: 0.52 };
    const series = comparableSeries(readings, [factor]);
    expect(series).toMatchObject({ converted: 2, brokenBy: null });
    expect(series.points.map(({ value }) => value)).toEqual([52, 50.96, 50, 49]);
    const inverse = { from: 'new bridge', to: 'old bridge', factor: 2 };
    expect(comparableSeries(readings, [inverse]).points[0]?.value).toBe(50);
  });

  it('takes an instrument that was not recorded for one of its own', () => {
    expect(comparableSeries([...readings, reading(5, 48, null)], []).points).toHaveLength(1);
  });
});
