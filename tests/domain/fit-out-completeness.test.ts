import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fitOutCompleteness } from '../../src/domain/completeness/fitOutCompleteness.js';
import type { PositionState } from '../../src/domain/completeness/positionCheck.js';

const required = (positionKey: string) => ({ positionKey, isRequired: true });
const optional = (positionKey: string) => ({ positionKey, isRequired: false });
const check = (positionKey: string, state: PositionState, checkedAtMs: number) => ({
  checkId: `${positionKey} at ${checkedAtMs}`,
  positionKey,
  state,
  checkedAtMs,
});
const fitting = (positionKey: string, fittedAtMs: number, removedAtMs: number | null = null) => ({
  componentId: `part of ${positionKey}`,
  positionKey,
  fittedAtMs,
  removedAtMs,
});
const stateOf = (
  checks: ReturnType<typeof check>[],
  fittings: ReturnType<typeof fitting>[],
  asOfMs = 100,
) => {
  const [position] = fitOutCompleteness([required('V1')], checks, fittings, asOfMs).positions;
  return [position?.state, position?.restsOn];
};

describe('completeness against the fit-out', () => {
  it('counts only the required positions known to be present', () => {
    const fitOut = [
      required('V1'),
      required('V2'),
      required('C12'),
      required('cover'),
      optional('dial lamp'),
    ];
    const checks = [
      check('V1', 'PRESENT', 1),
      check('V2', 'WRONG', 1),
      check('C12', 'MISSING', 1),
      check('dial lamp', 'MISSING', 1),
    ];
    const found = fitOutCompleteness(fitOut, checks, [], 100);
    expect(found.share).toBe(0.25);
    expect(found.requiredCounts).toEqual({ PRESENT: 1, MISSING: 1, WRONG: 1, UNKNOWN: 1 });
    expect(found.optionalCounts).toEqual({ PRESENT: 0, MISSING: 1, WRONG: 0, UNKNOWN: 0 });
    expect(found.missing.map((one) => one.positionKey)).toEqual(['C12', 'dial lamp']);
    expect(found.basis).toMatchObject({
      counted: [
        { what: 'required positions', count: 4 },
        { what: 'positions known by a check', count: 4 },
        { what: 'positions known by a recorded fitting or removal', count: 0 },
        { what: 'positions never checked', count: 1 },
      ],
      asOfMs: 100,
    });
  });

  it('has no share where the model has no fit-out, or requires nothing', () => {
    expect(fitOutCompleteness([], [], [], 0).share).toBeNull();
    expect(fitOutCompleteness([optional('dial lamp')], [], [], 0).share).toBeNull();
  });

  it('takes a recorded fitting for presence where nobody checked, and says so', () => {
    expect(stateOf([], [])).toEqual(['UNKNOWN', 'NOTHING']);
    expect(stateOf([], [fitting('V1', 5)])).toEqual(['PRESENT', 'FITTING']);
  });

  it('lets the later of check, fitting and removal decide', () => {
    expect(stateOf([check('V1', 'MISSING', 5)], [fitting('V1', 6)])).toEqual([
      'PRESENT',
      'FITTING',
    ]);
    expect(stateOf([check('V1', 'WRONG', 7)], [fitting('V1', 6)])).toEqual(['WRONG', 'CHECK']);
    expect(stateOf([check('V1', 'PRESENT', 7)], [fitting('V1', 6, 8)])).toEqual([
      'MISSING',
      'REMOVAL',
    ]);
    expect(stateOf([check('V1', 'PRESENT', 9)], [fitting('V1', 6, 8)])).toEqual([
      'PRESENT',
      'CHECK',
    ]);
    expect(stateOf([check('V1', 'MISSING', 6)], [fitting('V1', 6)])).toEqual([
      'PRESENT',
      'FITTING',
    ]);
  });

  it('shows the new part after an exchange at one instant, in whatever order it is recorded', () => {
    const removedOld = fitting('V1', 1, 6);
    const fittedNew = fitting('V1', 6);
    expect(stateOf([], [removedOld, fittedNew])).toEqual(['PRESENT', 'FITTING']);
    expect(stateOf([], [fittedNew, removedOld])).toEqual(['PRESENT', 'FITTING']);
  });

  it('learns nothing from a part that left at the instant it came', () => {
    expect(stateOf([check('V1', 'WRONG', 5)], [fitting('V1', 6, 6)])).toEqual(['WRONG', 'CHECK']);
  });

  it('answers for a past instant from what was known by then', () => {
    const checks = [check('V1', 'MISSING', 5), check('V1', 'PRESENT', 9)];
    expect(stateOf(checks, [], 4)).toEqual(['UNKNOWN', 'NOTHING']);
    expect(stateOf(checks, [], 8)).toEqual(['MISSING', 'CHECK']);
    expect(stateOf([], [fitting('V1', 5, 9)], 8)).toEqual(['PRESENT', 'FITTING']);
  });

  it('counts every position once, and none that the fit-out does not name', () => {
    const keys = fc.constantFrom('V1', 'V2', 'V3', 'elsewhere');
    const states = fc.constantFrom<PositionState[]>('PRESENT', 'MISSING', 'WRONG', 'UNKNOWN');
    const checks = fc.array(fc.tuple(keys, states, fc.nat(9)));
    fc.assert(
      fc.property(checks, (some) => {
        const fitOut = [required('V1'), required('V2'), optional('V3')];
        const made = some.map(([key, state, atMs]) => check(key, state, atMs));
        const found = fitOutCompleteness(fitOut, made, [], 9);
        const sum = (counts: object) => Object.values(counts).reduce((all, one) => all + one, 0);
        expect(sum(found.requiredCounts)).toBe(2);
        expect(sum(found.optionalCounts)).toBe(1);
        expect(found.share).toBe(found.requiredCounts.PRESENT / 2);
      }),
    );
  });
});
