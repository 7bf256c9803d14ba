import { describe, expect, it } from 'vitest';
import { levelAt } from '../../src/domain/readiness/levelAt.js';
import { readiness } from '../../src/domain/readiness/readiness.js';
import { readinessAt } from '../../src/domain/readiness/readinessAt.js';
import type { ReadinessFacts } from '../../src/domain/readiness/readinessFacts.js';
import { readinessStanding } from '../../src/domain/readiness/readinessStanding.js';
import {
  accessory,
  DAY_MS,
  finding,
  hazard,
  item,
  rigOnTheAir,
} from '../support/readinessFacts.js';

const verdictOn = (facts: ReadinessFacts, nowMs = DAY_MS) => {
  const { level, blockers } = readiness(facts, nowMs);
  return [level, ...blockers.map((blocker) => blocker.code)];
};
const component = (
  state: 'UNTESTED' | 'PASSED_ON_TESTER' | 'PROVEN_IN_CIRCUIT' | 'SUSPECT' | 'REJECTED',
  isInRequiredPosition = true,
) => ({ componentId: 'tube', name: '6146B in V1', isInRequiredPosition, state });

describe('what keeps a rig off the air', () => {
  it('is nothing when every condition is met', () => {
    expect(verdictOn(rigOnTheAir())).toEqual(['ON_AIR_READY']);
    expect(readiness(rigOnTheAir(), DAY_MS).servedRoles).toEqual([
      { roleCode: 'SUPPLY', servedByIds: ['supply'] },
    ]);
  });

  it.each<[string, Partial<ReadinessFacts>, string[]]>([
    ['retired', { rig: item('rig', { isRetired: true }) }, ['NOT_READY', 'RETIRED']],
    ['lent', { rig: item('rig', { isInHand: false }) }, ['NOT_READY', 'NOT_IN_HAND']],
    [
      'a blocking finding',
      { rig: item('rig', { findings: [finding()] }) },
      ['NOT_READY', 'BLOCKING_FINDING_OPEN'],
    ],
    [
      'an electrical finding, though not marked as blocking',
      {
        rig: item('rig', { findings: [finding({ isBlocking: false, isElectricalHazard: true })] }),
      },
      ['DO_NOT_CONNECT', 'ELECTRICAL_HAZARD_OPEN'],
    ],
    [
      'a hazard not cleared',
      { rig: item('rig', { hazards: [hazard()] }) },
      ['DO_NOT_CONNECT', 'HAZARD_NOT_CLEARED'],
    ],
    [
      'a rejected component',
      { rig: item('rig', { components: [component('REJECTED')] }) },
      ['NOT_READY', 'COMPONENT_REJECTED'],
    ],
    [
      'a suspect component',
      { rig: item('rig', { components: [component('SUSPECT')] }) },
      ['NOT_READY', 'COMPONENT_SUSPECT'],
    ],
    [
      'an empty position',
      { positions: [{ positionKey: 'V1', isRequired: true, state: 'MISSING' }] },
      ['NOT_READY', 'POSITION_MISSING'],
    ],
    [
      'a wrong part',
      { positions: [{ positionKey: 'V1', isRequired: true, state: 'WRONG' }] },
      ['NOT_READY', 'POSITION_WRONG'],
    ],
    [
      'nobody to serve a role',
      { requiredRoles: [{ roleCode: 'SUPPLY', roleName: 'power supply', accessoryIds: [] }] },
      ['NOT_READY', 'ROLE_NOT_SERVED'],
    ],
    ['no final check', { finalChecks: [] }, ['CHECKS_DUE', 'FINAL_CHECK_MISSING']],
    ['no procedure named', { procedures: [] }, ['CHECKS_DUE', 'NO_FINAL_CHECK_NAMED']],
  ])('names %s', (_, more, expected) => {
    const facts = rigOnTheAir(more);
    expect(verdictOn(facts)).toEqual(expected);
    for (const blocker of readiness(facts, DAY_MS).blockers) {
      expect(blocker.wouldBeMetBy).toMatch(/^[A-Z].*\.$/);
      expect(blocker.message).toMatch(/^[A-Z“].*\.$/);
    }
  });

  it('is decided by the worst, with every reason named', () => {
    const facts = rigOnTheAir({
      rig: item('rig', { findings: [finding()], hazards: [hazard()] }),
      finalChecks: [],
    });
    expect(verdictOn(facts)).toEqual([
      'DO_NOT_CONNECT',
      'BLOCKING_FINDING_OPEN',
      'HAZARD_NOT_CLEARED',
      'FINAL_CHECK_MISSING',
    ]);
  });

  it('shows the caution beside the hazard, and the check that alone clears it', () => {
    const [blocker] = readiness(
      rigOnTheAir({ rig: item('rig', { hazards: [hazard()] }) }),
      0,
    ).blockers;
    expect(blocker?.message).toContain('Discharge and measure before touching.');
    expect(blocker?.wouldBeMetBy).toBe('Record the check “Filter bank discharged” as passed.');
  });

  it('leaves out what is closed, cleared or not required', () => {
    const facts = rigOnTheAir({
      rig: item('rig', {
        findings: [finding({ isOpen: false }), finding({ isBlocking: false })],
        hazards: [hazard({ isCleared: true }), hazard({ isByDesign: true })],
        components: [component('REJECTED', false), component('UNTESTED')],
      }),
      positions: [
        { positionKey: 'lamp', isRequired: false, state: 'MISSING' },
        { positionKey: 'V2', isRequired: true, state: 'UNKNOWN' },
      ],
    });
    const answer = readiness(facts, DAY_MS);
    expect(answer.level).toBe('ON_AIR_READY');
    expect(answer.cautions.map((caution) => caution.code)).toEqual([
      'HAZARD_BY_DESIGN',
      'FINDING_OPEN',
      'COMPONENT_NOT_GOOD',
      'COMPONENTS_NOT_PROVEN',
      'POSITIONS_UNKNOWN',
    ]);
  });
});

describe('accessories that serve', () => {
  const servedBy = (...accessories: ReturnType<typeof accessory>[]) =>
    rigOnTheAir({
      requiredRoles: [
        { roleCode: 'SUPPLY', roleName: 'power supply', accessoryIds: ['supply', 'spare'] },
      ],
      accessories,
    });

  it('need one that is serviceable; the other is warned of', () => {
    const facts = servedBy(accessory('supply', { isRetired: true }), accessory('spare'));
    const answer = readiness(facts, DAY_MS);
    expect(answer.level).toBe('ON_AIR_READY');
    expect(answer.servedRoles).toEqual([{ roleCode: 'SUPPLY', servedByIds: ['spare'] }]);
    expect(answer.cautions).toMatchObject([
      {
        code: 'ACCESSORY_NOT_SERVICEABLE',
        message: 'Do not use “supply” as power supply: “supply” is retired.',
      },
    ]);
  });

  it('do not serve with a rejected tube of their own', () => {
    const supply = accessory('supply', { components: [component('REJECTED', false)] });
    expect(verdictOn(servedBy(supply, accessory('spare', { isInHand: false })))).toEqual([
      'NOT_READY',
      'ROLE_NOT_SERVED',
    ]);
  });

  it('do not serve from inside one that cannot serve, which is named', () => {
    const facts = servedBy(
      accessory('supply', { housedInId: 'cabinet' }),
      accessory('spare', { housedInId: 'cabinet' }),
      accessory('cabinet', { findings: [finding()] }),
    );
    const [blocker] = readiness(facts, DAY_MS).blockers;
    expect(blocker?.message).toContain('“supply” is housed in “cabinet”, which cannot serve:');
    expect(blocker?.message).toContain('The mains lead is brittle.');
  });

  it('keep the rig unconnected when all that could serve carries a hazard', () => {
    const facts = servedBy(
      accessory('supply', { hazards: [hazard()] }),
      accessory('spare', { isRetired: true }),
    );
    expect(verdictOn(facts)).toEqual(['DO_NOT_CONNECT', 'ROLE_NOT_SERVED']);
  });

  it('never loop when they are recorded as housed in one another', () => {
    const facts = servedBy(
      accessory('supply', { housedInId: 'spare' }),
      accessory('spare', { housedInId: 'supply' }),
    );
    const [blocker] = readiness(facts, DAY_MS).blockers;
    expect(blocker?.message).toContain('housed, step by step, in itself');
    expect(verdictOn(servedBy())).toEqual(['NOT_READY', 'ROLE_NOT_SERVED']);
  });
});

describe('final checks', () => {
  const check = (isPassed: boolean, doneAtMs: number) => ({
    checkId: `check at ${doneAtMs}`,
    procedureCode: 'HUM',
    isPassed,
    doneAtMs,
  });

  it('hold for their days and not an instant longer', () => {
    const lapsesAtMs = 30 * DAY_MS;
    expect(verdictOn(rigOnTheAir(), lapsesAtMs - 1)).toEqual(['ON_AIR_READY']);
    expect(verdictOn(rigOnTheAir(), lapsesAtMs)).toEqual(['CHECKS_DUE', 'FINAL_CHECK_LAPSED']);
    expect(readiness(rigOnTheAir(), 0).checksValidUntilMs).toBe(lapsesAtMs);
  });

  it('never lapse where no validity is stated', () => {
    const procedures = [{ procedureCode: 'HUM', name: 'Hum', validityDays: null }];
    const answer = readiness(rigOnTheAir({ procedures }), 1e15);
    expect([answer.level, answer.checksValidUntilMs]).toEqual(['ON_AIR_READY', null]);
  });

  it('count by the latest: a failure stands until the next pass', () => {
    const failedLast = rigOnTheAir({ finalChecks: [check(false, 5), check(true, 4)] });
    expect(verdictOn(failedLast)).toEqual(['NOT_READY', 'FINAL_CHECK_FAILED']);
    expect(verdictOn(rigOnTheAir({ finalChecks: [check(false, 5), check(true, 6)] }))).toEqual([
      'ON_AIR_READY',
    ]);
    expect(verdictOn(rigOnTheAir({ finalChecks: [check(false, 5), check(true, 5)] }))).toEqual([
      'NOT_READY',
      'FINAL_CHECK_FAILED',
    ]);
  });

  it('can be applied anew to a kept answer, whole or level alone', () => {
    const kept = JSON.parse(JSON.stringify(readinessStanding(rigOnTheAir()))) as ReturnType<
      typeof readinessStanding
    >;
    for (const nowMs of [0, 30 * DAY_MS - 1, 30 * DAY_MS, 40 * DAY_MS]) {
      expect(readinessAt(kept, nowMs)).toEqual(readiness(rigOnTheAir(), nowMs));
      expect(levelAt(kept, nowMs)).toBe(readiness(rigOnTheAir(), nowMs).level);
    }
  });
});
