import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { housingUnits } from '../../src/domain/shack/housingUnits.js';
import { largestAtOnce, type AtOnce } from '../../src/domain/shack/largestAtOnce.js';
import type { Shack, ShackRig } from '../../src/domain/shack/shack.js';
import { whyLeftOut } from '../../src/domain/shack/whyLeftOut.js';

const ROLES = ['SUPPLY', 'SPEAKER', 'KEY', 'VFO'];

function shackOf(
  needs: Record<string, Record<string, string[]>>,
  housedIn: Record<string, string | null> = {},
): Shack {
  const rigs = Object.entries(needs).map(([rigId, roles]): ShackRig => ({
    rigId,
    needs: Object.entries(roles).map(([roleCode, accessoryIds]) => ({ roleCode, accessoryIds })),
  }));
  return { rigs, unitOf: housingUnits(new Map(Object.entries(housedIn))) };
}

/** Rigs, roles and accessories at random: an accessory has one role, a housing may hold several. */
const anyShack = (rigs: number, accessories: number, roles: number): fc.Arbitrary<Shack> =>
  fc
    .record({
      role: fc.array(fc.nat({ max: roles - 1 }), {
        minLength: accessories,
        maxLength: accessories,
      }),
      housing: fc.array(fc.option(fc.nat({ max: accessories - 1 }), { nil: null, freq: 3 }), {
        minLength: accessories,
        maxLength: accessories,
      }),
      needs: fc.array(fc.uniqueArray(fc.nat({ max: roles - 1 })), {
        minLength: rigs,
        maxLength: rigs,
      }),
      serves: fc.array(fc.array(fc.boolean(), { minLength: rigs, maxLength: rigs }), {
        minLength: accessories,
        maxLength: accessories,
      }),
    })
    .map(({ role, housing, needs, serves }) =>
      shackOf(
        Object.fromEntries(
          needs.map((codes, rig) => [
            `rig ${rig}`,
            Object.fromEntries(
              codes.map((code) => [
                ROLES[code] as string,
                role.flatMap((own, accessory) =>
                  own === code && serves[accessory]?.[rig] ? [`a${accessory}`] : [],
                ),
              ]),
            ),
          ]),
        ),
        Object.fromEntries(
          housing.map((within, accessory) => [
            `a${accessory}`,
            within === null || within >= accessory ? null : `a${within}`,
          ]),
        ),
      ),
    );

/** A second opinion: every way of serving every rig or not, sharing no code with the search. */
function byExhaustion({ rigs, unitOf }: Shack): number {
  const unit = (id: string) => unitOf.get(id) ?? id;
  const holder = new Map<string, string>();
  const serveFrom = (rig: number): number => {
    const one = rigs[rig];
    if (!one) return 0;
    return Math.max(
      serveFrom(rig + 1),
      fill(one, 0, () => 1 + serveFrom(rig + 1)),
    );
  };
  const fill = (rig: ShackRig, need: number, then: () => number): number => {
    const wanted = rig.needs[need];
    if (!wanted) return then();
    let best = 0;
    for (const id of wanted.accessoryIds) {
      const by = holder.get(unit(id));
      if (by !== undefined && by !== rig.rigId) continue;
      holder.set(unit(id), rig.rigId);
      best = Math.max(best, fill(rig, need + 1, then));
      if (by === undefined) holder.delete(unit(id));
    }
    return best;
  };
  return serveFrom(0);
}

/** That an answer can be carried out: every role filled, no unit at two rigs. */
function expectFeasible({ rigs, unitOf }: Shack, { served }: AtOnce): void {
  const holder = new Map<string, string>();
  for (const [rigId, roles] of served) {
    const rig = rigs.find((one) => one.rigId === rigId);
    expect(roles.map(({ roleCode }) => roleCode)).toEqual(rig?.needs.map((need) => need.roleCode));
    for (const { roleCode, accessoryId } of roles) {
      expect(rig?.needs.find((need) => need.roleCode === roleCode)?.accessoryIds).toContain(
        accessoryId,
      );
      const unit = unitOf.get(accessoryId) ?? accessoryId;
      expect(holder.get(unit) ?? rigId).toBe(rigId);
      holder.set(unit, rigId);
    }
  }
}

describe('the rigs that can be on the air at once', () => {
  it.each([
    ['one role', 6, 5, 1, 400],
    ['two roles', 5, 6, 2, 400],
    ['three roles', 5, 7, 3, 500],
    ['four roles', 4, 8, 4, 300],
  ] as const)('are as many as exhaustion finds: %s', (_, rigs, accessories, roles, numRuns) => {
    fc.assert(
      fc.property(anyShack(rigs, accessories, roles), (shack) => {
        const answer = largestAtOnce(shack);
        expectFeasible(shack, answer);
        expect(answer.isProven).toBe(true);
        expect([answer.served.size, answer.atMost]).toEqual(
          Array.from({ length: 2 }, () => byExhaustion(shack)),
        );
      }),
      { numRuns, seed: 40 },
    );
  });

  it('share a supply one at a time, and the reason says who has it', () => {
    const shack = shackOf({
      'R-1': { SUPPLY: ['PS-1'] },
      'R-2': { SUPPLY: ['PS-1', 'PS-2'] },
      'R-3': { SUPPLY: ['PS-2'] },
      'R-4': {},
    });
    const answer = largestAtOnce(shack);
    expect([...answer.served.keys()]).toContain('R-4');
    expect(answer.served.size).toBe(3);
    const [left] = shack.rigs.filter(({ rigId }) => !answer.served.has(rigId));
    const [role] = whyLeftOut(left as ShackRig, shack, answer);
    expect(role?.roleCode).toBe('SUPPLY');
    expect(role?.inUse.every(({ byRigId }) => answer.served.has(byRigId))).toBe(true);
  });

  it('get a supply and the speaker that houses it together', () => {
    const needs = { SUPPLY: ['PS-1'], SPEAKER: ['LS-1'] };
    const housed = { 'PS-1': 'LS-1', 'LS-1': null };
    const together = shackOf({ 'R-1': needs, 'R-2': { SPEAKER: ['LS-1'] } }, housed);
    expect(largestAtOnce(together).served.size).toBe(1);
    const apart = shackOf({ 'R-1': { SUPPLY: ['PS-1'] }, 'R-2': { SPEAKER: ['LS-1'] } }, housed);
    expect(largestAtOnce(apart).served.size).toBe(1);
    expect(largestAtOnce({ ...apart, unitOf: new Map() }).served.size).toBe(2);
  });

  it('never grow fewer when an accessory is added', () => {
    fc.assert(
      fc.property(anyShack(5, 6, 3), fc.nat(4), fc.nat(2), (shack, rig, role) => {
        const rigs = shack.rigs.map((one, index) => ({
          ...one,
          needs: one.needs.map((need) =>
            index === rig && need.roleCode === ROLES[role]
              ? { ...need, accessoryIds: [...need.accessoryIds, 'bought'] }
              : need,
          ),
        }));
        const more = largestAtOnce({ ...shack, rigs }).served.size;
        expect(more).toBeGreaterThanOrEqual(largestAtOnce(shack).served.size);
      }),
      { numRuns: 200 },
    );
  });

  it('are found and proven for hundreds of rigs and accessories of three roles', () => {
    // A linear congruential sequence, so that the case is the same each time.
    let state = 6146;
    const next = (below: number) => {
      state = (state * 1103515245 + 12345) % 2147483648;
      return Math.floor((state / 2147483648) * below);
    };
    const some = (kind: string, count: number) =>
      Array.from({ length: 1 + next(3) }, () => `${kind}${next(count)}`);
    const shack = shackOf(
      Object.fromEntries(
        Array.from({ length: 200 }, (_, rig) => [
          `R-${rig}`,
          { SUPPLY: some('PS', 140), SPEAKER: some('LS', 110), KEY: some('K', 160) },
        ]),
      ),
    );
    const answer = largestAtOnce(shack);
    expectFeasible(shack, answer);
    expect(answer.isProven).toBe(true);
  }, 60_000);

  it('say so when the search is cut short, and never claim more than was found', () => {
    const shack = shackOf(
      Object.fromEntries(
        Array.from({ length: 12 }, (_, rig) => [
          `R-${rig}`,
          Object.fromEntries(
            ROLES.map((role, index) => [
              role,
              [0, 1, 2].map((step) => `${role}${(rig * (index + 2) + step * (index + 1)) % 7}`),
            ]),
          ),
        ]),
      ),
    );
    const cut = largestAtOnce(shack, 0);
    expectFeasible(shack, cut);
    const full = largestAtOnce(shack);
    expect(cut.served.size).toBeLessThanOrEqual(full.served.size);
    expect(cut.atMost).toBeGreaterThanOrEqual(full.served.size);
    expect(cut.isProven).toBe(cut.served.size === cut.atMost);
  });
});
