import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { apportion } from '../../src/domain/money/apportion.js';
import { weightProblems } from '../../src/domain/money/weightProblems.js';

const weights = fc.array(fc.integer({ min: 1, max: 10_000_000 }), { minLength: 1, maxLength: 20 });
const totals = fc.maxSafeInteger();

describe('spreading the price of a lot over its items', () => {
  it('gives the odd cent to the earlier of equal shares', () => {
    expect(apportion(100, [1, 1, 1])).toEqual([34, 33, 33]);
    expect(apportion(101, [1, 1, 1])).toEqual([34, 34, 33]);
  });

  it('spreads a refund as its positive twin with the sign turned', () => {
    expect(apportion(-100, [1, 1, 1])).toEqual([-34, -33, -33]);
    fc.assert(
      fc.property(totals, weights, (total, shares) => {
        const mirrored = apportion(-total, shares).map((part) => (part === 0 ? 0 : -part));
        expect(apportion(total, shares)).toEqual(mirrored);
      }),
    );
  });

  it('loses no unit: the parts add up to the whole', () => {
    fc.assert(
      fc.property(totals, weights, (total, shares) => {
        const sum = apportion(total, shares).reduce((all, part) => all + BigInt(part), 0n);
        expect(sum).toBe(BigInt(total));
      }),
    );
  });

  it('keeps every part within one unit of its ideal share', () => {
    fc.assert(
      fc.property(totals, weights, (total, shares) => {
        const sum = BigInt(shares.reduce((all, share) => all + share, 0));
        apportion(total, shares).forEach((part, index) => {
          const distance = BigInt(part) * sum - BigInt(total) * BigInt(shares[index] ?? 0);
          expect(distance < sum && -distance < sum).toBe(true);
        });
      }),
    );
  });

  it('does not depend on the order of the items, save between equal remainders', () => {
    const distinct = fc.uniqueArray(fc.integer({ min: 1, max: 1000 }), {
      minLength: 2,
      maxLength: 12,
    });
    fc.assert(
      fc.property(fc.nat(1_000_000), distinct, fc.nat(11), (total, shares, turn) => {
        const sum = shares.reduce((all, share) => all + share, 0);
        const remainders = shares.map((share) => (total * share) % sum);
        fc.pre(new Set(remainders).size === shares.length);
        const turned = [...shares.slice(turn), ...shares.slice(0, turn)];
        const parts = apportion(total, shares);
        const turnedParts = apportion(total, turned);
        turned.forEach((share, index) =>
          expect(turnedParts[index]).toBe(parts[shares.indexOf(share)]),
        );
      }),
    );
  });

  it('takes shares far larger than a float can hold', () => {
    expect(apportion(10, [10n ** 40n, 10n ** 40n + 1n])).toEqual([5, 5]);
    expect(apportion(1, [10n ** 40n, 10n ** 40n + 1n])).toEqual([0, 1]);
    expect(apportion(Number.MAX_SAFE_INTEGER, [1, 2])).toEqual([
      3002399751580330, 6004799503160661,
    ]);
  });

  it('refuses shares that mean nothing, and says which', () => {
    expect(weightProblems([1, 2, 3n])).toEqual([]);
    expect(weightProblems([])).toMatchObject([{ index: null }]);
    expect(weightProblems([0, 0n])).toMatchObject([
      { index: null, message: expect.stringContaining('All shares are zero') },
    ]);
    expect(weightProblems([5, 0, -1, 0.5])).toMatchObject([
      { index: 1, message: expect.stringContaining('zero') },
      { index: 2, message: expect.stringContaining('negative') },
      { index: 3, message: expect.stringContaining('whole number') },
    ]);
    expect(() => apportion(10, [1, -1])).toThrow(/Share 2: .*negative/);
    expect(() => apportion(10.5, [1])).toThrow(RangeError);
  });
});
