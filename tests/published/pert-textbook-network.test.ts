import { describe, expect, it } from 'vitest';
import { millsRatio } from '../../src/domain/estimates/millsRatio.js';
import { pertMoments } from '../../src/domain/estimates/pertMoments.js';

const estimate = (optimisticHours: number, likelyHours: number, pessimisticHours: number) => ({
  optimisticHours,
  likelyHours,
  pessimisticHours,
});

/** The textbooks' chance that a path is done in time: normal, by central limit. */
function chanceWithin(limit: number, mean: number, variance: number): number {
  const z = (limit - mean) / Math.sqrt(variance);
  return 1 - (millsRatio(z) * Math.exp((-z * z) / 2)) / Math.sqrt(2 * Math.PI);
}

// Source: the seven-activity PERT network of a management science textbook, as printed at
// flylib.com, 3.287.1.117; critical path 1-3-5-7; the book's table gives .9633 for the chance.
describe('the management science textbook’s network of seven activities', () => {
  const activities = [
    { name: 1, estimate: estimate(5, 8, 17), mean: 9, variance: 4 },
    { name: 2, estimate: estimate(7, 10, 13), mean: 10, variance: 1 },
    { name: 3, estimate: estimate(3, 5, 7), mean: 5, variance: 4 / 9 },
    { name: 4, estimate: estimate(1, 3, 5), mean: 3, variance: 4 / 9 },
    { name: 5, estimate: estimate(4, 6, 8), mean: 6, variance: 4 / 9 },
    { name: 6, estimate: estimate(3, 3, 3), mean: 3, variance: 0 },
    { name: 7, estimate: estimate(3, 4, 5), mean: 4, variance: 1 / 9 },
  ];

  it.each(activities)('activity $name has mean $mean and variance $variance', (activity) => {
    const moments = pertMoments(activity.estimate);
    expect(moments.meanHours).toBeCloseTo(activity.mean, 12);
    expect(moments.classicVarianceHours).toBeCloseTo(activity.variance, 12);
  });

  it('has a critical path of mean 24 and variance 5, done within 28 with chance .9632', () => {
    const onPath = activities
      .filter(({ name }) => [1, 3, 5, 7].includes(name))
      .map((activity) => pertMoments(activity.estimate));
    const mean = onPath.reduce((sum, { meanHours }) => sum + meanHours, 0);
    const variance = onPath.reduce((sum, moments) => sum + moments.classicVarianceHours, 0);
    expect(mean).toBeCloseTo(24, 12);
    expect(variance).toBeCloseTo(5, 12);
    expect(chanceWithin(28, mean, variance)).toBeCloseTo(0.9632, 4);
    expect(Math.abs(chanceWithin(28, mean, variance) - 0.9633)).toBeLessThan(0.0002);
  });
});

// The eight-activity network of a quantitative analysis textbook: inputs from memory, result
// recomputed with another program.
it('the eight-activity network, path A-C-E-G-H: mean 15, variance 3.111, P(16) = .7146', () => {
  const path = [
    [1, 2, 3],
    [1, 2, 3],
    [1, 4, 7],
    [3, 4, 11],
    [1, 2, 3],
  ].map((hours) => pertMoments(estimate(hours[0]!, hours[1]!, hours[2]!)));
  const mean = path.reduce((sum, { meanHours }) => sum + meanHours, 0);
  const variance = path.reduce((sum, moments) => sum + moments.classicVarianceHours, 0);
  expect(mean).toBeCloseTo(15, 12);
  expect(variance).toBeCloseTo(3.111111, 6);
  expect(chanceWithin(16, mean, variance)).toBeCloseTo(0.714625, 6);
});

// Upper tail areas Q(z) of the normal distribution, from memory of the usual tables (z = 1.96
// leaves 2.5 %); far out, from the integral itself.
describe('Mills’ ratio', () => {
  const tail = (z: number) => (millsRatio(z) * Math.exp((-z * z) / 2)) / Math.sqrt(2 * Math.PI);
  it.each([
    [0, 0.5],
    [1, 0.15865525],
    [1.959963985, 0.025],
    [2, 0.02275013],
    [3, 0.001349898],
    [-1, 0.84134475],
  ])('at z = %d leaves a tail of %d', (z, area) => {
    expect(tail(z)).toBeCloseTo(area, 8);
  });

  it('agrees where series and continued fraction meet', () => {
    expect(millsRatio(3 - 1e-12) / millsRatio(3)).toBeCloseTo(1, 10);
  });
});
