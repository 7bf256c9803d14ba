import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { componentState } from '../../src/domain/condition/componentState.js';
import type { JudgedReading } from '../../src/domain/condition/judgedReading.js';
import type { Limit } from '../../src/domain/condition/limit.js';
import { limitProblems } from '../../src/domain/condition/limitProblems.js';
import { verdict } from '../../src/domain/condition/verdict.js';
import { compareDecimals } from '../../src/domain/decimal/compareDecimals.js';

const limit = (lower: string | null, upper: string | null, more: Partial<Limit> = {}): Limit => ({
  quantityCode: 'TRANSCONDUCTANCE',
  lower,
  upper,
  unitCode: 'mS',
  tier: null,
  source: null,
  ...more,
});
const read = (value: string, tier: 'TESTER' | 'IN_CIRCUIT' = 'TESTER') => ({
  quantityCode: 'TRANSCONDUCTANCE',
  unitCode: 'mS',
  tier,
  value,
});

describe('the verdict on a reading', () => {
  it('counts the ends as within, however the number is written', () => {
    expect(verdict(read('0.30'), [limit('0.3', null)]).word).toBe('WITHIN_LIMITS');
    expect(verdict(read('0.3'), [limit('0.30', '0.300')]).word).toBe('WITHIN_LIMITS');
    expect(verdict(read('0.29999999999999999999'), [limit('0.3', null)]).word).toBe('BELOW_LIMIT');
    expect(verdict(read('0.30000000000000000001'), [limit(null, '0.3')]).word).toBe('ABOVE_LIMIT');
    expect(verdict(read('3e-1'), [limit('0.3', '0.3')]).word).toBe('WITHIN_LIMITS');
  });

  it('judges nothing where no limit is recorded', () => {
    expect(verdict(read('5'), []).word).toBe('NO_LIMIT');
    expect(verdict(read('5'), [limit('9', null, { quantityCode: 'EMISSION' })]).word).toBe(
      'NO_LIMIT',
    );
    expect(verdict(read('5'), [limit('9', null, { tier: 'IN_CIRCUIT' })]).word).toBe('NO_LIMIT');
  });

  it('names the strictest of several limits', () => {
    const lenient = limit('3', '9', { source: 'data sheet' });
    const strict = limit('4', null, { source: 'own rule' });
    const judged = verdict(read('3.5'), [lenient, strict]);
    expect(judged).toMatchObject({ word: 'BELOW_LIMIT', brokenLimit: strict, limitsApplied: 2 });
    expect(judged.strictestUpper).toBe(lenient);
  });

  it('asks for conversion instead of comparing unlike units', () => {
    expect(() => verdict(read('5'), [limit('4000', null, { unitCode: 'uS' })])).toThrow(/convert/);
  });

  it('compares decimals as exactly as whole numbers', () => {
    fc.assert(
      fc.property(fc.bigInt(), fc.bigInt(), fc.nat(20), (left, right, shift) => {
        const order = left < right ? -1 : left > right ? 1 : 0;
        const text = (value: bigint) => {
          const digits = String(value < 0n ? -value : value).padStart(shift + 1, '0');
          const cut = digits.length - shift;
          const fraction = shift === 0 ? '' : `.${digits.slice(cut)}`;
          return (value < 0n ? '-' : '') + digits.slice(0, cut) + fraction;
        };
        fc.pre(text(left).length < 100 && text(right).length < 100);
        expect(compareDecimals(text(left), text(right))).toBe(order);
      }),
    );
    expect(() => compareDecimals('1,5', '2')).toThrow(/“1,5”/);
  });

  it('refuses limits that cannot judge', () => {
    expect(limitProblems(limit('3', '9'))).toEqual([]);
    expect(limitProblems(limit(null, null))).toHaveLength(1);
    expect(limitProblems(limit('x', 'y'))).toHaveLength(2);
    expect(limitProblems(limit('9', '3'))).toMatchObject([{ field: 'lower' }]);
  });
});

let readingNumber = 0;
const judged = (
  tier: JudgedReading['tier'],
  quantityCode: string,
  word: JudgedReading['verdict'],
  takenAtMs: number,
): JudgedReading => ({
  readingId: `reading ${++readingNumber}`,
  tier,
  quantityCode,
  verdict: word,
  takenAtMs,
});

describe('the state of a component', () => {
  it('is untested without a reading that could be judged', () => {
    expect(componentState([])).toEqual({
      state: 'UNTESTED',
      ground: 'NOTHING_JUDGED',
      readingIds: [],
    });
    expect(componentState([judged('TESTER', 'EMISSION', 'NO_LIMIT', 1)]).state).toBe('UNTESTED');
  });

  it('of a tube that passed on a tester is not yet proven', () => {
    const pass = judged('TESTER', 'EMISSION', 'WITHIN_LIMITS', 1);
    expect(componentState([pass])).toEqual({
      state: 'PASSED_ON_TESTER',
      ground: 'WITHIN_LIMITS',
      readingIds: [pass.readingId],
    });
  });

  it('is proven by the circuit', () => {
    const tester = judged('TESTER', 'EMISSION', 'WITHIN_LIMITS', 1);
    const circuit = judged('IN_CIRCUIT', 'OUTPUT', 'WITHIN_LIMITS', 2);
    expect(componentState([tester, circuit])).toEqual({
      state: 'PROVEN_IN_CIRCUIT',
      ground: 'WITHIN_LIMITS',
      readingIds: [circuit.readingId],
    });
  });

  it('is rejected by one latest reading outside its limits, on either tier', () => {
    const bad = judged('TESTER', 'LEAKAGE', 'ABOVE_LIMIT', 1);
    const good = judged('TESTER', 'EMISSION', 'WITHIN_LIMITS', 9);
    expect(componentState([good, bad])).toEqual({
      state: 'REJECTED',
      ground: 'OUTSIDE_LIMITS',
      readingIds: [bad.readingId],
    });
    const badInCircuit = judged('IN_CIRCUIT', 'OUTPUT', 'BELOW_LIMIT', 1);
    const goodInCircuit = judged('IN_CIRCUIT', 'CATHODE_CURRENT', 'WITHIN_LIMITS', 2);
    expect(componentState([badInCircuit, goodInCircuit]).state).toBe('REJECTED');
  });

  it('forgets a bad reading once the same quantity on the same tier reads good', () => {
    const bad = judged('TESTER', 'EMISSION', 'BELOW_LIMIT', 1);
    const good = judged('TESTER', 'EMISSION', 'WITHIN_LIMITS', 2);
    expect(componentState([good, bad]).state).toBe('PASSED_ON_TESTER');
    expect(componentState([bad, { ...good, verdict: 'NO_LIMIT' }]).state).toBe('REJECTED');
    expect(componentState([bad, { ...good, takenAtMs: 1 }]).state).toBe('REJECTED');
  });

  it('is suspect when the circuit speaks for what the tester rejected', () => {
    const short = judged('TESTER', 'LEAKAGE', 'ABOVE_LIMIT', 1);
    const works = judged('IN_CIRCUIT', 'OUTPUT', 'WITHIN_LIMITS', 2);
    expect(componentState([short, works])).toEqual({
      state: 'SUSPECT',
      ground: 'CONTRADICTION',
      readingIds: [short.readingId, works.readingId],
    });
  });

  it('is suspect too when both speak at one instant, as on a day recorded without a time', () => {
    const short = judged('TESTER', 'LEAKAGE', 'ABOVE_LIMIT', 1);
    const works = judged('IN_CIRCUIT', 'OUTPUT', 'WITHIN_LIMITS', 1);
    expect(componentState([short, works]).state).toBe('SUSPECT');
  });

  it('is suspect when a trend reaches a limit soon, unless it is rejected already', () => {
    const works = judged('IN_CIRCUIT', 'OUTPUT', 'WITHIN_LIMITS', 2);
    expect(componentState([works], [['a', 'b'], ['b']])).toEqual({
      state: 'SUSPECT',
      ground: 'TREND',
      readingIds: ['a', 'b'],
    });
    const bad = judged('IN_CIRCUIT', 'OUTPUT', 'BELOW_LIMIT', 3);
    expect(componentState([works, bad], [['a']]).state).toBe('REJECTED');
  });

  it('is rejected when the tester speaks last: what once worked has aged', () => {
    const worked = judged('IN_CIRCUIT', 'OUTPUT', 'WITHIN_LIMITS', 1);
    const short = judged('TESTER', 'LEAKAGE', 'ABOVE_LIMIT', 2);
    expect(componentState([worked, short]).state).toBe('REJECTED');
  });

  it('does not depend on the order of the readings and never passes with a standing objection', () => {
    const readings = fc.array(
      fc.record({
        readingId: fc.uuid(),
        quantityCode: fc.constantFrom('EMISSION', 'LEAKAGE'),
        tier: fc.constantFrom('TESTER' as const, 'IN_CIRCUIT' as const),
        verdict: fc.constantFrom(
          'WITHIN_LIMITS' as const,
          'BELOW_LIMIT' as const,
          'ABOVE_LIMIT' as const,
          'NO_LIMIT' as const,
        ),
        takenAtMs: fc.nat(5),
      }),
      { maxLength: 10 },
    );
    fc.assert(
      fc.property(readings, (some) => {
        const found = componentState(some);
        const { state, readingIds } = found;
        expect(componentState([...some].reverse())).toEqual(found);
        const speaking = some.filter((reading) => reading.verdict !== 'NO_LIMIT');
        const lastMs = Math.max(...speaking.map((reading) => reading.takenAtMs));
        const lastIsBad = speaking.some(
          (one) => one.takenAtMs === lastMs && one.verdict !== 'WITHIN_LIMITS',
        );
        if (lastIsBad) expect(['REJECTED', 'SUSPECT']).toContain(state);
        const hasCircuit = some.some((reading) => reading.tier === 'IN_CIRCUIT');
        if (!hasCircuit) expect(['PROVEN_IN_CIRCUIT', 'SUSPECT']).not.toContain(state);
        expect(readingIds.length === 0).toBe(state === 'UNTESTED');
      }),
    );
  });
});
