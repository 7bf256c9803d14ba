import { describe, expect, it } from 'vitest';
import { lognormalParameters } from '../../src/domain/estimates/lognormalParameters.js';
import { lognormalResidual } from '../../src/domain/estimates/lognormalResidual.js';
import { pertBeta } from '../../src/domain/estimates/pertBeta.js';
import { pertMoments } from '../../src/domain/estimates/pertMoments.js';
import { pertShape } from '../../src/domain/estimates/pertShape.js';
import { integrate } from '../support/integrate.js';

// Values computed outside the project with SciPy's beta distribution. Shapes, mean and exact
// variance: the PERT beta, alpha = 1 + 4(m - a)/(b - a), alpha + beta = 6.
const cases = [
  {
    hours: [2, 4, 12],
    alpha: 1.8,
    beta: 4.2,
    mean: 5,
    exact: 3,
    classic: 2.777778,
    quantiles: [
      [0.5, 4.76672],
      [0.8, 6.50259],
      [0.9, 7.45334],
    ],
  },
  {
    hours: [6, 9, 18],
    alpha: 2,
    beta: 4,
    mean: 10,
    exact: 4.571429,
    classic: 4,
    quantiles: [
      [0.8, 11.88231],
      [0.9, 13.00668],
    ],
  },
  {
    hours: [1, 3, 5],
    alpha: 3,
    beta: 3,
    mean: 3,
    exact: 0.571429,
    classic: 0.444444,
    quantiles: [[0.8, 3.69361]],
  },
].map(({ hours, ...rest }) => ({
  ...rest,
  estimate: { optimisticHours: hours[0]!, likelyHours: hours[1]!, pessimisticHours: hours[2]! },
}));

describe.each(cases)('the PERT beta of $estimate', ({ estimate, ...expected }) => {
  const shape = pertShape(estimate)!;
  const range = estimate.pessimisticHours - estimate.optimisticHours;

  it('has the stated shape and moments', () => {
    expect(shape.alpha).toBeCloseTo(expected.alpha, 12);
    expect(shape.beta).toBeCloseTo(expected.beta, 12);
    const moments = pertMoments(estimate);
    expect(moments.meanHours).toBeCloseTo(expected.mean, 12);
    expect(moments.exactVarianceHours).toBeCloseTo(expected.exact, 6);
    expect(moments.classicVarianceHours).toBeCloseTo(expected.classic, 6);
  });

  it('has the stated quantiles', () => {
    for (const [probability, hours] of expected.quantiles as [number, number][]) {
      const quantile = estimate.optimisticHours + range * pertBeta(shape).quantile(probability);
      expect(Math.abs(quantile - hours)).toBeLessThan(1e-5 * range);
    }
  });

  it('has quantiles that its density, integrated plainly, gives back', () => {
    const density = (x: number) => x ** (shape.alpha - 1) * (1 - x) ** (shape.beta - 1);
    const whole = integrate(density, 0, 1);
    for (const probability of [0.001, 0.05, 0.25, 0.5, 0.75, 0.95, 0.999]) {
      const x = pertBeta(shape).quantile(probability);
      expect(integrate(density, 0, x) / whole).toBeCloseTo(probability, 5);
    }
  });

  it('has the same moments in its table as by formula', () => {
    const moments = pertMoments(estimate);
    const table = pertBeta(shape);
    expect(estimate.optimisticHours + range * table.meanFraction).toBeCloseTo(moments.meanHours, 7);
    expect(range ** 2 * table.varianceFraction).toBeCloseTo(moments.exactVarianceHours, 7);
  });

  it.each([0.9, 0.5, 0.1, 0.001])('cut to its last %d, has the mean of what is left', (left) => {
    const passed = 1 - left;
    const density = (x: number) => x ** (shape.alpha - 1) * (1 - x) ** (shape.beta - 1);
    const whole = integrate(density, passed, 1);
    const mean = integrate((x) => (x - passed) * density(x), passed, 1) / whole;
    const square = integrate((x) => (x - passed) ** 2 * density(x), passed, 1) / whole;
    const table = pertBeta(shape, left);
    expect(table.meanFraction / mean).toBeCloseTo(1, 6);
    expect(table.varianceFraction / (square - mean ** 2)).toBeCloseTo(1, 5);
    const median = table.quantile(0.5);
    expect(integrate(density, passed, passed + median) / whole).toBeCloseTo(0.5, 5);
  });
});

// Beta distributions with whole shapes have a polynomial for their distribution function.
it.each([
  [3, 3, (x: number) => 10 * x ** 3 - 15 * x ** 4 + 6 * x ** 5],
  [2, 4, (x: number) => 1 - (1 - x) ** 4 * (1 + 4 * x)],
  [1, 5, (x: number) => 1 - (1 - x) ** 5],
  [5, 1, (x: number) => x ** 5],
])('the quantiles of beta(%d, %d) undo its polynomial', (alpha, beta, distribution) => {
  for (let probability = 0.0005; probability < 1; probability += 0.0095) {
    expect(distribution(pertBeta({ alpha, beta }).quantile(probability))).toBeCloseTo(
      probability,
      5,
    );
  }
});

it('a single figure has no shape', () => {
  expect(pertShape({ optimisticHours: 3, likelyHours: 3, pessimisticHours: 3 })).toBeNull();
});

describe('the lognormal tail beyond a refuted estimate', () => {
  it('has the parameters of its mean and variation (100, 50 %), computed with SciPy', () => {
    const { mu, sigma } = lognormalParameters(100, 0.5);
    expect(sigma).toBeCloseTo(0.472381, 6);
    expect(mu).toBeCloseTo(4.493598, 6);
  });

  it.each([
    [10, 0.1, 10],
    [10, 0.1, 30],
    [5, 0.35, 12],
    [20, 0.8, 120],
  ])('mean %d, variation %d, %d hours spent: moments as its density gives', (mean, cv, spent) => {
    const { mu, sigma } = lognormalParameters(mean, cv);
    const start = (Math.log(spent) - mu) / sigma;
    // Scaled by the density where the tail starts, which would otherwise be too small a number.
    const density = (z: number) => Math.exp((start * start - z * z) / 2);
    const left = (z: number) => Math.exp(mu + sigma * z) - spent;
    const whole = integrate(density, start, start + 12);
    const first = integrate((z) => left(z) * density(z), start, start + 12) / whole;
    const second = integrate((z) => left(z) ** 2 * density(z), start, start + 12) / whole;
    const residual = lognormalResidual(mean, cv, spent);
    expect(residual.meanHours / first).toBeCloseTo(1, 8);
    expect(residual.varianceHours / (second - first ** 2)).toBeCloseTo(1, 6);
  });
});
