import { expect, it } from 'vitest';
import { shrinkGroups } from '../../src/domain/calibration/shrinkGroups.js';

// Source: yield of dyestuff by batch, Davies and Goldsmith, Statistical Methods in Research and
// Production, 4th ed., 1972, section 6.4; the data as in the package lme4 for R, its published fit
// (REML, which for equal groups is the analysis of variance): between batches 1764.05, within
// 2451.25, mean 1527.5 (fit from memory; recomputed by hand: MSB 11271.5).
it('six batches of dyestuff: variances between and within, and the batch effects', () => {
  const batches = new Map(
    Object.entries({
      A: [1545, 1440, 1440, 1520, 1580],
      B: [1540, 1555, 1490, 1560, 1495],
      C: [1595, 1550, 1605, 1510, 1560],
      D: [1445, 1440, 1595, 1465, 1545],
      E: [1595, 1630, 1515, 1635, 1625],
      F: [1520, 1455, 1450, 1480, 1445],
    }),
  );
  const { grandMean, withinVariance, betweenVariance, groups } = shrinkGroups(batches);
  expect(grandMean).toBeCloseTo(1527.5, 10);
  expect(withinVariance).toBeCloseTo(2451.25, 8);
  expect(betweenVariance).toBeCloseTo(1764.05, 8);
  const effect = (batch: string) => {
    const { mean, weight } = groups.get(batch)!;
    return weight * (mean - grandMean);
  };
  expect(effect('A')).toBeCloseTo(-17.6069, 3);
  expect(effect('B')).toBeCloseTo(0.3913, 3);
  expect(effect('E')).toBeCloseTo(56.7332, 3);
});

// No publication: ratios of actual to estimated hours of three kinds of work, computed from the
// formulas of the analysis of variance with another program.
it('unequal groups of ratios: power, audio and RF work', () => {
  const ratios = {
    power: [1.6, 1.4, 2.0, 1.5],
    audio: [1.1, 0.9],
    rf: [1.3, 1.8, 1.2, 1.6, 1.5],
  };
  const logs = Object.entries(ratios).map(
    ([kind, values]) => [kind, values.map(Math.log)] as const,
  );
  const { grandMean, withinVariance, betweenVariance, groups } = shrinkGroups(new Map(logs));
  expect(withinVariance).toBeCloseTo(0.0245741, 6);
  expect(grandMean).toBeCloseTo(0.3457254, 6);
  expect(betweenVariance).toBeCloseTo(0.0392967, 6);
  const expected = { power: [0.8648, 1.58189], audio: [0.7618, 1.08169], rf: [0.8888, 1.45878] };
  for (const [kind, [weight, multiplier]] of Object.entries(expected)) {
    const group = groups.get(kind)!;
    expect(group.weight).toBeCloseTo(weight!, 4);
    const shrunk = group.weight * group.mean + (1 - group.weight) * grandMean;
    expect(Math.exp(shrunk)).toBeCloseTo(multiplier!, 4);
  }
});
