import { errorFunction } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import { kendallTail } from '../../src/domain/trend/kendallTail.js';
import { mannKendall } from '../../src/domain/trend/mannKendall.js';
import { normalTail } from '../../src/domain/trend/normalTail.js';
import { theilSen, YEAR_MS } from '../../src/domain/trend/theilSen.js';

/**
 * Sodium in a well: US EPA, Statistical Analysis of Groundwater Monitoring Data at Hazardous Waste Facilities,
 * Unified Guidance (EPA 530/R-09-007, 2009), chapter 17, example of the Theil–Sen trend line. The
 * guidance prints S = 25 and a slope of 1.33 ppm a year; the data are from memory.
 */
const sodium = [
  [1989.6, 56],
  [1990.1, 53],
  [1990.8, 51],
  [1991.1, 55],
  [1992.1, 52],
  [1993.1, 60],
  [1994.1, 62],
  [1995.6, 59],
  [1996.1, 61],
  [1996.3, 63],
] as const;
const points = sodium.map(([year, value]) => ({ atMs: year * YEAR_MS, value }));

describe('the sodium example of the Unified Guidance', () => {
  it('has S = 25 and a slope of 1.33 a year', () => {
    const test = mannKendall(points.map(({ value }) => value));
    expect(test.s).toBe(25);
    expect(test.variance).toBe(125);
    // By the formulas of Gilbert (1987), 16.4.2.
    expect(test.z).toBeCloseTo(2.14663, 5);
    const line = theilSen(points, test.variance);
    expect(line.slopePerYear).toBeCloseTo(1.33, 2);
    // Sen's interval by Gilbert (1987), 16.5.2: ranks 11.543 and 34.457 of 45, interpolated.
    expect(line.interval?.lowPerYear).toBeCloseTo(0.399208, 5);
    expect(line.interval?.highPerYear).toBeCloseTo(2.333333, 5);
    const intercept = line.pivot.value - line.slopePerYear * (line.pivot.atMs / YEAR_MS);
    // Conover's intercept, as the general-purpose library SciPy gives it for these data.
    expect(intercept).toBeCloseTo(-2599.3, 1);
  });
});

describe('probabilities of S', () => {
  it('are those of Gilbert (1987), table A18 (from memory)', () => {
    const table = [
      [4, 0, 0.625],
      [4, 2, 0.375],
      [4, 4, 0.167],
      [4, 6, 0.042],
      [5, 0, 0.592],
      [5, 6, 0.117],
      [5, 8, 0.042],
      [5, 10, 0.0083],
      [8, 12, 0.089],
      [8, 16, 0.031],
      [9, 20, 0.022],
    ] as const;
    for (const [n, s, probability] of table) {
      expect(kendallTail(n, s), `n ${n} S ${s}`).toBeCloseTo(probability, 3);
    }
  });

  it('have the normal tail of a general-purpose library', () => {
    for (const z of [0, 0.5, 1, 1.96, 2.14663, 2.99, 3.01, 5]) {
      expect(normalTail(z)).toBeCloseTo((1 - errorFunction(z / Math.SQRT2)) / 2, 6);
    }
  });

  it('have the variance of a series of a hundred rising values printed in an open test file', () => {
    const rising = mannKendall(Array.from({ length: 100 }, (_, index) => index + 1));
    expect(rising).toMatchObject({ s: 4950, variance: 112750, isExact: false });
    expect(rising.z).toBeCloseTo(14.73869998, 8);
  });
});
