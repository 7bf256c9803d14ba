import { describe, expect, it } from 'vitest';
import { lognormalParameters } from '../../src/domain/estimates/lognormalParameters.js';
import { chanceOfBreach } from '../../src/domain/worth/chanceOfBreach.js';
import { lognormalAmount } from '../../src/domain/worth/lognormalAmount.js';
import { outcomesOf, mostToSpend, type Prospects } from '../../src/domain/worth/outcomes.js';
import { partsWorth } from '../../src/domain/worth/partsWorth.js';
import { simulateCosts } from '../../src/domain/worth/simulateCosts.js';
import { threePointAmount } from '../../src/domain/worth/threePointAmount.js';
import { certainAmount } from '../../src/domain/worth/uncertainAmount.js';
import { worthKnowingCost } from '../../src/domain/worth/worthKnowing.js';

/** The closed form of the lognormal, by scipy: mean 100, cv 0.5, and mean 400, cv 0.5. */
const lognormal = (mean: number, variation: number) => {
  const { mu, sigma } = lognormalParameters(mean, variation);
  return lognormalAmount(Math.exp(mu), sigma);
};
const choices = { seed: 'closed forms', trials: 40_000 };
const trialsOf = (mean: number, variation: number) =>
  simulateCosts([{ id: 'it', amount: lognormal(mean, variation) }], null, choices).money;

describe('trials of costs against closed forms', () => {
  it('give the percentiles of one lognormal', () => {
    const amount = lognormal(100, 0.5);
    expect(amount.mean).toBeCloseTo(100, 9);
    expect(amount.at(0.5)).toBeCloseTo(89.4427, 4);
    expect(amount.at(0.8)).toBeCloseTo(133.1084, 4);
    expect(amount.at(0.9)).toBeCloseTo(163.8545, 4);
    const sorted = trialsOf(100, 0.5).slice().sort();
    expect(sorted[20_000]).toBeCloseTo(89.44, -0.5);
    expect(sorted[32_000]).toBeCloseTo(133.11, -0.5);
  });

  it('give the chance of passing a ceiling', () => {
    // P(X > 150) = 0.136860; one standard error of 40,000 trials is 0.0017.
    expect(Math.abs(chanceOfBreach(trialsOf(100, 0.5), 0, 150) - 0.13686)).toBeLessThan(0.006);
    expect(Math.abs(chanceOfBreach(trialsOf(400, 0.5), 0, 650) - 0.103119)).toBeLessThan(0.006);
  });

  it('give mean and variance of a sum of unlike costs', () => {
    const lines = [
      { id: 'tube', amount: lognormal(40_00, 0.4) },
      {
        id: 'rewinding',
        amount: threePointAmount({ optimistic: 60_00, likely: 90_00, pessimistic: 180_00 }),
      },
      { id: 'lacquer', amount: certainAmount(12_00) },
    ];
    const { money, analytic } = simulateCosts(lines, null, choices);
    // The PERT beta of (6, 9, 18) has mean 10 and variance 4.571429.
    expect(analytic.mean).toBeCloseTo(40_00 + 100_00 + 12_00, 6);
    expect(analytic.variance).toBeCloseTo(1600 ** 2 + 4_571_428.57, 0);
    const mean = money.reduce((sum, one) => sum + one, 0) / money.length;
    const variance = money.reduce((sum, one) => sum + (one - mean) ** 2, 0) / money.length;
    const error = Math.sqrt(analytic.variance / money.length);
    expect(Math.abs(mean - analytic.mean)).toBeLessThan(4 * error);
    expect(Math.abs(variance / analytic.variance - 1)).toBeLessThan(0.08);
  });

  it('give the stop-loss figures: done 900, salvage 250, cost to come 400', () => {
    const prospects: Prospects = {
      finishes: [{ standard: 'WORKING', value: certainAmount(900), expectedCost: 400 }],
      asItStands: certainAmount(250),
      partsNet: null,
      spares: null,
      saleCostShare: 0,
      successChance: 1,
      premium: 0,
    };
    const outcomes = outcomesOf(prospects);
    expect(outcomes.map(({ kind, gain }) => [kind, gain])).toEqual([
      ['FINISH', 500],
      ['LEAVE', 250],
      ['SELL', 250],
    ]);
    expect(mostToSpend(outcomes[0]!, outcomes)).toBe(650);
    // Knowing the cost saves what is above 650: E[max(X - 650, 0)] of the lognormal, in closed form
    // m Phi(d1) - k Phi(d2), d1 = (ln(m/k) + s²/2)/s (as in option pricing), here 17.6.
    const knowing = worthKnowingCost(prospects, { trials: trialsOf(400, 0.5), bornBy: () => 1 });
    const { sigma } = lognormalParameters(400, 0.5);
    const d1 = (Math.log(400 / 650) + sigma ** 2 / 2) / sigma;
    const phi = (z: number) => 1 / (1 + Math.exp(-1.5976 * z - 0.07056 * z ** 3));
    expect(Math.abs(knowing - (400 * phi(d1) - 650 * phi(d1 - sigma)))).toBeLessThan(1.5);
  });

  it('match mean and variance of a sum of lognormals, as Fenton has it', () => {
    const sum = partsWorth(
      [
        { count: 1, price: lognormal(30, 0.5) },
        { count: 1, price: lognormal(70, 0.3) },
      ],
      1,
    );
    expect(sum.mean).toBeCloseTo(100, 9);
    expect(sum.variance).toBeCloseTo(15 ** 2 + 21 ** 2, 6);
    const { mu } = lognormalParameters(100, Math.sqrt(666) / 100);
    expect(sum.at(0.5)).toBeCloseTo(Math.exp(mu), 9);
  });
});
