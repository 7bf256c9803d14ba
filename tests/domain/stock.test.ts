import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { costOfUnits } from '../../src/domain/stock/costOfUnits.js';
import { pickFromLots } from '../../src/domain/stock/pickFromLots.js';

describe('what units of a lot cost', () => {
  it('gives three tubes bought for 10.00 3.33, 3.33 and 3.34', () => {
    expect([0, 1, 2].map((before) => costOfUnits(1000, 3, before, 1))).toEqual([333, 333, 334]);
  });

  it('adds up to the price of the lot however the units left', () => {
    fc.assert(
      fc.property(
        fc.nat(1_000_000_000_000),
        fc.array(fc.integer({ min: 1, max: 50_000 }), { minLength: 1, maxLength: 20 }),
        (price, draws) => {
          const units = draws.reduce((sum, draw) => sum + draw, 0);
          let before = 0;
          const parts = draws.map((draw) => {
            const part = costOfUnits(price, units, before, draw);
            before += draw;
            return part;
          });
          expect(parts.reduce((sum, part) => sum + part, 0)).toBe(price);
          expect(Math.min(...parts)).toBeGreaterThanOrEqual(0);
        },
      ),
    );
  });

  it('refuses units that the lot does not hold', () => {
    expect(() => costOfUnits(1000, 3, 3, 1)).toThrow(RangeError);
    expect(() => costOfUnits(1000, 0, 0, 0)).toThrow(RangeError);
    expect(() => costOfUnits(1000, 3, 0, 1.5)).toThrow(RangeError);
  });
});

describe('picking from lots', () => {
  it('empties the oldest lot before it touches the next', () => {
    const lots = [
      { lotId: 'oldest', available: 2 },
      { lotId: 'empty', available: 0 },
      { lotId: 'newest', available: 5 },
    ];
    expect(pickFromLots(lots, 4)).toEqual({
      picks: [
        { lotId: 'oldest', quantity: 2 },
        { lotId: 'newest', quantity: 2 },
      ],
      missing: 0,
    });
  });

  it('never picks more than a lot has, and picks and what is missing make what was wanted', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: -3, max: 9 }), { maxLength: 8 }),
        fc.nat(60),
        (counts, wanted) => {
          const lots = counts.map((available, index) => ({ lotId: String(index), available }));
          const { picks, missing } = pickFromLots(lots, wanted);
          const picked = picks.reduce((sum, pick) => sum + pick.quantity, 0);
          expect(picked + missing).toBe(wanted);
          for (const { lotId, quantity } of picks) {
            expect(quantity).toBeGreaterThan(0);
            expect(quantity).toBeLessThanOrEqual(counts[Number(lotId)] ?? 0);
          }
        },
      ),
    );
  });
});
