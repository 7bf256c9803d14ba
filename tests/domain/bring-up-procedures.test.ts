import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { gatesBefore, isWhollyPassed } from '../../src/domain/bringUp/gatesBefore.js';
import { stepOutcome, type StepOutcome } from '../../src/domain/bringUp/stepOutcome.js';
import { loadProcedures } from '../../src/features/bringUp/loadProcedures.js';
import { seedFolder } from '../../src/features/hazards/seedFolder.js';

const shipped = seedFolder('procedures');

describe('the bring-up procedures', () => {
  const all = [...loadProcedures(shipped).values()];

  it('go from the line cord to the final checks, with no power before the capacitors are seen to', () => {
    for (const { steps } of all) {
      const keys = steps.map(({ key }) => key);
      expect(keys.slice(0, 5)).toEqual([
        'cord-and-fuse',
        'earth-bond',
        'insulation-resistance',
        'capacitors',
        'limited-first-power',
      ]);
      expect(keys.at(-1)).toBe('final-checks');
      expect(steps.findIndex(({ appliesPower }) => appliesPower)).toBe(4);
    }
    expect(all.map(({ key }) => key)).toEqual(['tube-receiver', 'tube-transmitter']);
  });

  it.each(
    all.flatMap(({ key, steps }) => steps.map((step) => [`${key} ${step.key}`, step] as const)),
  )('%s has cautions and sources', (_name, step) => {
    expect(step.cautions.length).toBeGreaterThan(0);
    expect(step.source.length).toBeGreaterThan(10);
    for (const { source } of step.readings) expect(source.length).toBeGreaterThan(10);
  });

  it('defer to local codes and claim nothing', () => {
    for (const file of readdirSync(shipped)) {
      const text = readFileSync(join(shipped, file), 'utf8');
      expect(text).toMatch(/local codes/);
      expect(text, file).not.toMatch(/\b(un)?safe(ly)?\b|\bharmless\b|\bno (danger|risk)\b/i);
    }
  });
});

describe('a procedure that a club edits', () => {
  let folder: string;
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'reglow-procedures-'));
    cpSync(shipped, folder, { recursive: true });
  });
  afterEach(() => {
    rmSync(folder, { recursive: true, force: true });
  });
  const edit = (from: string | RegExp, to: string): void => {
    const path = join(folder, 'tube-receiver.yaml');
    writeFileSync(path, readFileSync(path, 'utf8').replace(from, to));
  };

  it.each([
    ["upper: '0.1'", "upper: '-1'\n        lower: '0'", /lower end above its upper end/],
    ["unit: 'Ohm'", "unit: 'ohmz'", /no unit of UCUM/],
    ['key: earth-bond', 'key: cord-and-fuse', /two steps of one key/],
    ['appliesPower: false', 'appliesPower: true', /power in its first step/],
    ['hazardIfFailed: DAMAGED_CORD', 'hazardIfFailed: DRAGONS', /hazardIfFailed/],
    ['key: tube-receiver', 'key: my-receiver', /call the file my-receiver\.yaml/],
  ])('with %s made %s is refused with the reason', (from, to, message) => {
    edit(from, to);
    expect(() => loadProcedures(folder)).toThrow(message);
  });

  it('may change a limit', () => {
    edit("upper: '0.1'", "upper: '0.2'");
    const [, bond] = loadProcedures(folder).get('tube-receiver')?.steps ?? [];
    expect(bond?.readings[0]?.upper).toBe('0.2');
  });
});

describe('gates', () => {
  const steps = fc.uniqueArray(
    fc.record({ key: fc.string({ minLength: 1, maxLength: 3 }), isGate: fc.boolean() }),
    { selector: ({ key }) => key, minLength: 1, maxLength: 8 },
  );
  const outcome = fc.constantFrom<StepOutcome>('NOT_DONE', 'PASSED', 'FAILED');

  it('a step is open exactly when every gate before it is passed; a whole pass opens them all', () => {
    fc.assert(
      fc.property(steps, fc.array(outcome, { minLength: 8, maxLength: 8 }), (own, found) => {
        const outcomes = new Map(own.map(({ key }, index) => [key, found[index] ?? 'NOT_DONE']));
        for (const [place, { key }] of own.entries()) {
          const waiting = own.filter(
            (one, index) => index < place && one.isGate && outcomes.get(one.key) !== 'PASSED',
          );
          expect(gatesBefore(own, key, outcomes)).toEqual(waiting);
        }
        if (isWhollyPassed(own, outcomes)) {
          expect(own.every(({ key }) => gatesBefore(own, key, outcomes).length === 0)).toBe(true);
        }
      }),
    );
  });

  it('one statement that does not hold, or one reading outside, fails a step', () => {
    expect(stepOutcome(null)).toBe('NOT_DONE');
    expect(stepOutcome({ holds: [true], words: ['WITHIN_LIMITS', 'NO_LIMIT'] })).toBe('PASSED');
    expect(stepOutcome({ holds: [true, false], words: [] })).toBe('FAILED');
    expect(stepOutcome({ holds: [], words: ['WITHIN_LIMITS', 'ABOVE_LIMIT'] })).toBe('FAILED');
  });
});
