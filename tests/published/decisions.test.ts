import { describe, expect, it } from 'vitest';
import { valueOfInformation } from '../../src/domain/worth/valueOfInformation.js';

/**
 * J. Heizer and B. Render, "Operations Management", Module A, "Decision-Making Tools": the plant of
 * example A3 with its expected value of perfect information, as the published slides
 * print it (EMV 48,000, 52,000 and 0; with perfect information 120,000; EVPI 68,000), in thousands.
 */
describe('a decision under risk, by the textbook', () => {
  const large = [200, -180];
  const small = [100, -20];
  const nothing = [0, 0];

  it('gives the expected values, the best choice and what perfect information is worth', () => {
    const told = valueOfInformation([large, small, nothing], [0.6, 0.4]);
    expect(told.expected).toEqual([48, 52, 0].map((value) => expect.closeTo(value, 9)));
    expect(told.best).toBe(1);
    expect(told.without).toBeCloseTo(52, 9);
    expect(told.withPerfect).toBeCloseTo(120, 9);
    expect(told.perfectInformation).toBeCloseTo(68, 9);
  });

  // A published solution of a payoff table with three states (solvely.ai, 318896182).
  it('gives 2.8 for three choices over three states', () => {
    const told = valueOfInformation(
      [
        [10, 8, 6],
        [14, 15, 2],
        [7, 8, 9],
      ],
      [0.2, 0.4, 0.4],
    );
    expect(told.expected).toEqual([7.6, 9.6, 8.2].map((value) => expect.closeTo(value, 9)));
    expect(told.perfectInformation).toBeCloseTo(2.8, 9);
  });
});
