import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Blocker } from '../../src/domain/readiness/blocker.js';
import { readiness } from '../../src/domain/readiness/readiness.js';
import type {
  AccessoryFacts,
  ItemFacts,
  ReadinessFacts,
} from '../../src/domain/readiness/readinessFacts.js';
import { readinessTree } from '../../src/domain/readiness/readinessTree.js';
import type { Condition } from '../../src/domain/readiness/condition.js';
import { anyFacts } from '../support/anyReadinessFacts.js';
import { accessory, DAY_MS } from '../support/readinessFacts.js';

const NOW_MS = 100 * DAY_MS;
const LEVELS = ['DO_NOT_CONNECT', 'NOT_READY', 'CHECKS_DUE', 'ON_AIR_READY'];

/** A second opinion, written from the conditions alone and sharing no code with the first. */
function plainLevel(facts: ReadinessFacts): string {
  const byId = new Map(facts.accessories.map((one) => [one.itemId, one]));
  const hazardous = (one: ItemFacts) =>
    one.hazards.some((hazard) => !(hazard.isCleared || hazard.isByDesign)) ||
    one.findings.some((finding) => finding.isOpen && finding.isElectricalHazard);
  const outOfUse = (one: ItemFacts) =>
    one.isRetired || !one.isInHand || one.findings.some((f) => f.isOpen && f.isBlocking);
  const bad = ['SUSPECT', 'REJECTED'];
  const housings = (id: string): (AccessoryFacts | undefined)[] => {
    const chain: (AccessoryFacts | undefined)[] = [];
    for (let next: string | null = id; next !== null;) {
      const one = byId.get(next);
      if (one === undefined || chain.includes(one)) return [...chain, undefined];
      chain.push(one);
      next = one.housedInId;
    }
    return chain;
  };
  const roles = facts.requiredRoles.map(({ accessoryIds }) => {
    const chains = accessoryIds.map(housings);
    const isFit = (chain: (AccessoryFacts | undefined)[]) =>
      chain.every(
        (one) =>
          one &&
          !hazardous(one) &&
          !outOfUse(one) &&
          !one.positions?.some((p) => p.isRequired && ['MISSING', 'WRONG'].includes(p.state)) &&
          !one.finalChecks?.some((check) => !check.isPassed) &&
          !one.components.some((c) => bad.includes(c.state)),
      );
    const serves = chains.some(isFit);
    const isStale = !chains.some(
      (chain) =>
        isFit(chain) &&
        chain.every((one) =>
          one?.finalChecks?.every((check) => NOW_MS - check.doneAtMs < 30 * DAY_MS),
        ),
    );
    const isDangerous = !serves && chains.flat().some((one) => one && hazardous(one));
    return { serves, isStale, isDangerous };
  });
  if (hazardous(facts.rig) || roles.some((role) => role.isDangerous)) return 'DO_NOT_CONNECT';
  const latest = facts.procedures.map(({ procedureCode, validityDays }) => {
    const made = facts.finalChecks.filter((check) => check.procedureCode === procedureCode);
    const lastMs = Math.max(...made.map((check) => check.doneAtMs));
    return {
      isMade: made.length > 0,
      hasFailed: made.some((check) => check.doneAtMs === lastMs && !check.isPassed),
      isStale: validityDays !== null && NOW_MS - lastMs >= validityDays * DAY_MS,
    };
  });
  if (
    facts.rig.identity?.modelName === null ||
    outOfUse(facts.rig) ||
    facts.rig.components.some((c) => c.isInRequiredPosition && bad.includes(c.state)) ||
    facts.positions.some((p) => p.isRequired && ['MISSING', 'WRONG'].includes(p.state)) ||
    roles.some((role) => !role.serves) ||
    latest.some((check) => check.hasFailed)
  ) {
    return 'NOT_READY';
  }
  const areChecksGood =
    latest.length > 0 &&
    latest.every((check) => check.isMade && !check.isStale) &&
    roles.every((role) => !role.isStale);
  return areChecksGood ? 'ON_AIR_READY' : 'CHECKS_DUE';
}

/** Does in the facts what the blocker asks for. */
function mend(facts: ReadinessFacts, blocker: Blocker): ReadinessFacts {
  const { rig } = facts;
  const id = blocker.subjectId;
  switch (blocker.code) {
    case 'RETIRED':
      return { ...facts, rig: { ...rig, isRetired: false } };
    case 'NOT_IN_HAND':
      return { ...facts, rig: { ...rig, isInHand: true } };
    case 'MODEL_NOT_NAMED':
      return { ...facts, rig: { ...rig, identity: { modelName: 'found', serialNumber: null } } };
    case 'ELECTRICAL_HAZARD_OPEN':
    case 'BLOCKING_FINDING_OPEN': {
      const findings = rig.findings.map((f) => (f.findingId === id ? { ...f, isOpen: false } : f));
      return { ...facts, rig: { ...rig, findings } };
    }
    case 'HAZARD_NOT_CLEARED': {
      const hazards = rig.hazards.map((h) => (h.hazardId === id ? { ...h, isCleared: true } : h));
      return { ...facts, rig: { ...rig, hazards } };
    }
    case 'COMPONENT_REJECTED':
    case 'COMPONENT_SUSPECT': {
      const components = rig.components.map((c) =>
        c.componentId === id ? { ...c, state: 'PROVEN_IN_CIRCUIT' as const } : c,
      );
      return { ...facts, rig: { ...rig, components } };
    }
    case 'POSITION_MISSING':
    case 'POSITION_WRONG': {
      const positions = facts.positions.map((p) =>
        p.positionKey === id ? { ...p, state: 'PRESENT' as const } : p,
      );
      return { ...facts, positions };
    }
    case 'ACCESSORY_CHECKS_LAPSED':
    case 'ROLE_NOT_SERVED': {
      const requiredRoles = facts.requiredRoles.map((role) =>
        role.roleCode === id ? { ...role, accessoryIds: [...role.accessoryIds, 'bought'] } : role,
      );
      return { ...facts, requiredRoles, accessories: [...facts.accessories, accessory('bought')] };
    }
    case 'NO_FINAL_CHECK_NAMED':
      return {
        ...facts,
        procedures: [{ procedureCode: 'NEW', name: 'New check', validityDays: 30 }],
      };
    case 'FINAL_CHECK_MISSING':
    case 'FINAL_CHECK_FAILED':
    case 'FINAL_CHECK_LAPSED': {
      const passed = { checkId: 'new', procedureCode: id, isPassed: true, doneAtMs: NOW_MS + 1 };
      return { ...facts, finalChecks: [...facts.finalChecks, passed] };
    }
    default:
      throw new Error(`${blocker.code} is no blocker of a rig.`);
  }
}

describe('readiness, as laws', () => {
  it('agrees with a second opinion written from the conditions alone', () => {
    const seen = new Set<string>();
    fc.assert(
      fc.property(anyFacts, (facts) => {
        const { level } = readiness(facts, NOW_MS);
        seen.add(level);
        expect(level).toBe(plainLevel(facts));
      }),
      { numRuns: 3000, seed: 6146 },
    );
    expect([...seen].sort()).toEqual([...LEVELS].sort());
  });

  it('never falls when a blocker is removed, and the blocker is gone', () => {
    fc.assert(
      fc.property(anyFacts, (facts) => {
        const before = readiness(facts, NOW_MS);
        for (const blocker of before.blockers) {
          const after = readiness(mend(facts, blocker), NOW_MS);
          expect(LEVELS.indexOf(after.level)).toBeGreaterThanOrEqual(LEVELS.indexOf(before.level));
          const isSame = (one: Blocker) =>
            one.code === blocker.code && one.subjectId === blocker.subjectId;
          expect(after.blockers.filter(isSame)).toEqual([]);
        }
      }),
      { numRuns: 500 },
    );
  });

  it('reaches the air once every named blocker is removed: none is kept back', () => {
    fc.assert(
      fc.property(anyFacts, (facts) => {
        let mended = facts;
        for (let round = 0; round < 3; round += 1) {
          mended = readiness(mended, NOW_MS).blockers.reduce(mend, mended);
        }
        expect(readiness(mended, NOW_MS)).toMatchObject({ level: 'ON_AIR_READY', blockers: [] });
      }),
      { numRuns: 500 },
    );
  });

  it('is derived in a tree that comes to the same level, and whose leaves say why', () => {
    const leavesOf = (condition: Condition): Condition[] =>
      condition.joins === null ? [condition] : condition.children.flatMap(leavesOf);
    fc.assert(
      fc.property(anyFacts, (facts) => {
        const tree = readinessTree(facts, NOW_MS);
        const { level, blockers } = readiness(facts, NOW_MS);
        expect(tree.level).toBe(level);
        expect(tree.state === 'NOT_MET').toBe(level !== 'ON_AIR_READY');
        const leaves = leavesOf(tree);
        const own = leaves.filter(
          ({ itemId, state, code }) =>
            itemId === 'rig' && state === 'NOT_MET' && code !== 'ROLE_SERVED',
        );
        expect(own.map(({ blockerCode }) => blockerCode).sort()).toEqual(
          blockers
            .map(({ code }) => code)
            .filter((code) => !/^ROLE|^ACCESSORY/.test(code))
            .sort(),
        );
        for (const leaf of leaves) {
          expect(leaf.wouldBeMetBy === null).toBe(leaf.state === 'MET');
          expect(leaf.level === 'ON_AIR_READY').toBe(leaf.state !== 'NOT_MET');
        }
      }),
      { numRuns: 1500, seed: 866 },
    );
  });

  it('never claims that anything is safe', () => {
    fc.assert(
      fc.property(anyFacts, (facts) => {
        const said = [readiness(facts, NOW_MS), readinessTree(facts, NOW_MS)];
        expect(JSON.stringify(said)).not.toMatch(/safe/i);
      }),
    );
  });
});
