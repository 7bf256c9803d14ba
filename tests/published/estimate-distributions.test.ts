import jstat from 'jstat';
import { describe, expect, it } from 'vitest';
import type { EstimateDistribution } from '../../src/domain/estimates/estimateDistribution.js';
import { lognormalParameters } from '../../src/domain/estimates/lognormalParameters.js';
import { normalCumulative } from '../../src/domain/estimates/normalCumulative.js';
import { normalQuantile } from '../../src/domain/estimates/normalQuantile.js';
import { normalTail } from '../../src/domain/estimates/normalTail.js';
import { pertBeta } from '../../src/domain/estimates/pertBeta.js';
import { remainingHours } from '../../src/domain/estimates/remainingHours.js';
import { integrate } from '../support/integrate.js';

// The general reference here is the package jstat 1.9.6: distributions of statistics at large.
const chances = [0.001, 0.02, 0.1, 0.25, 0.5, 0.75, 0.9, 0.98, 0.999];

describe('quantiles of the beta, against jstat', () => {
  it.each([
    [1, 5],
    [1.8, 4.2],
    [3, 3],
    [4.6, 1.4],
    [5, 1],
  ])('alpha %d, beta %d', (alpha, beta) => {
    const table = pertBeta({ alpha, beta });
    for (const chance of chances) {
      expect(Math.abs(table.quantile(chance) - jstat.beta.inv(chance, alpha, beta))).toBeLessThan(
        1e-5,
      );
    }
  });
});

const left = (
  distribution: EstimateDistribution,
  [a, m, b]: readonly [number, number, number],
  spentHours = 0,
) =>
  remainingHours({
    state: 'IN_PROGRESS',
    estimate: { optimisticHours: a, likelyHours: m, pessimisticHours: b, distribution },
    spentHours,
  });

describe('the triangular reading of an estimate', () => {
  it.each([
    [2, 4, 12],
    [1, 1, 5],
    [1, 5, 5],
  ] as const)('of %d, %d, %d hours has the quantiles that jstat gives', (a, m, b) => {
    for (const chance of chances) {
      expect(left('TRIANGULAR', [a, m, b]).hoursAt(chance)).toBeCloseTo(
        jstat.triangular.inv(chance, a, b, m),
        9,
      );
    }
  });

  // Mean (a + m + b) / 3 and variance (a² + m² + b² - am - ab - mb) / 18, from memory of the usual
  // tables; for 2, 4, 12 they give 6 and 4.666667.
  it('of 2, 4, 12 hours has the mean 6 and the variance 4.666667', () => {
    const { meanHours, varianceHours } = left('TRIANGULAR', [2, 4, 12]);
    expect(meanHours).toBeCloseTo(6, 12);
    expect(varianceHours).toBeCloseTo(4.666667, 6);
  });
});

it('the lognormal reading has the mean and variance of the PERT beta, and jstat’s quantiles', () => {
  const { meanHours, varianceHours, hoursAt } = left('LOGNORMAL', [2, 4, 12]);
  expect(meanHours).toBeCloseTo(5, 12);
  expect(varianceHours).toBeCloseTo(3, 12);
  const { mu, sigma } = lognormalParameters(5, Math.sqrt(3) / 5);
  for (const chance of chances) {
    expect(hoursAt(chance)).toBeCloseTo(jstat.lognormal.inv(chance, mu, sigma), 6);
  }
});

// By another route: Simpson's rule over the whole distribution's density, beyond the hours spent.
describe.each(['TRIANGULAR', 'LOGNORMAL'] as const)('hours left of a %s estimate', (name) => {
  const { mu, sigma } = lognormalParameters(5, Math.sqrt(3) / 5);
  const density = (x: number): number =>
    name === 'TRIANGULAR' ? jstat.triangular.pdf(x, 2, 12, 4) : jstat.lognormal.pdf(x, mu, sigma);
  it.each([0, 1, 2.5, 4, 7, 11])(
    'with %d hours spent have the moments of what is left',
    (spent) => {
      const end = name === 'TRIANGULAR' ? 12 : 60;
      // Split at the corner of the triangle, which Simpson's rule would blunt.
      const sum = (integrand: (x: number) => number): number =>
        spent < 4
          ? integrate(integrand, spent, 4) + integrate(integrand, 4, end)
          : integrate(integrand, spent, end);
      const whole = sum(density);
      const mean = sum((x) => (x - spent) * density(x)) / whole;
      const square = sum((x) => (x - spent) ** 2 * density(x)) / whole;
      const told = left(name, [2, 4, 12], spent);
      expect(told.meanHours / mean).toBeCloseTo(1, 4);
      expect(told.varianceHours / (square - mean ** 2)).toBeCloseTo(1, 3);
      const median = told.hoursAt(0.5);
      const below = integrate(density, spent, spent + median) / whole;
      expect(below).toBeCloseTo(0.5, 3);
    },
  );
});

describe('the normal distribution', () => {
  it('has the quantiles of the usual tables', () => {
    // NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.1, from memory: 1.6449 and 1.9600.
    expect(normalQuantile(0.95)).toBeCloseTo(1.644854, 6);
    expect(normalQuantile(0.975)).toBeCloseTo(1.959964, 6);
    for (const chance of chances) {
      expect(normalQuantile(chance)).toBeCloseTo(jstat.normal.inv(chance, 0, 1), 7);
    }
  });

  it('is undone by its quantile, from one end to the other', () => {
    for (let z = -8; z <= 8; z += 0.0937) {
      expect(normalTail(-z)).toBeCloseTo(normalCumulative(z), 9);
      if (Math.abs(z) < 7) expect(normalQuantile(normalTail(-z))).toBeCloseTo(z, z > 5 ? 3 : 9);
    }
    for (const z of [-12, -20, -30]) expect(normalQuantile(normalTail(-z))).toBeCloseTo(z, 9);
  });
});
