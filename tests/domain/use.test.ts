import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { maintenanceStanding } from '../../src/domain/use/maintenanceStanding.js';
import { minutesWithin } from '../../src/domain/use/minutesWithin.js';
import { rotation } from '../../src/domain/use/rotation.js';

const MINUTE_MS = 60_000;
const DAY_MS = 86_400_000;
const spell = (startMinute: number, minutes: number) => ({
  startedAtMs: startMinute * MINUTE_MS,
  minutes,
});

describe('minutes of use between two moments', () => {
  it('count the part of a spell that lies inside', () => {
    const spells = [spell(0, 60), spell(100, 30)];
    expect(minutesWithin(spells, 30 * MINUTE_MS, 110 * MINUTE_MS)).toBe(30 + 10);
    expect(minutesWithin(spells, 60 * MINUTE_MS, 100 * MINUTE_MS)).toBe(0);
  });

  it('add up whatever the moment at which the stretch is cut in two', () => {
    const spells = fc.array(
      fc.record({ at: fc.nat(500), minutes: fc.integer({ min: 1, max: 90 }) }),
    );
    fc.assert(
      fc.property(spells, fc.nat(600), (told, cut) => {
        const uses = told.map(({ at, minutes }) => spell(at, minutes));
        const whole = minutesWithin(uses, 0, 600 * MINUTE_MS);
        const first = minutesWithin(uses, 0, cut * MINUTE_MS);
        expect(first + minutesWithin(uses, cut * MINUTE_MS, 600 * MINUTE_MS)).toBe(whole);
      }),
    );
  });
});

describe('maintenance', () => {
  const rule = { everyUseMinutes: 240, everyDays: 100, sinceMs: 0 };

  it('falls due by hours of use or by the calendar, whichever is first', () => {
    expect(maintenanceStanding(rule, [spell(0, 240)], DAY_MS)).toMatchObject({
      isDue: true,
      minutesLeft: 0,
      share: 1,
    });
    expect(maintenanceStanding(rule, [], 100 * DAY_MS)).toMatchObject({ isDue: true, share: 1 });
    expect(maintenanceStanding(rule, [spell(0, 60)], 50 * DAY_MS)).toMatchObject({
      isDue: false,
      share: 0.5,
      dueAtMs: 100 * DAY_MS,
      minutesLeft: 180,
    });
  });

  it('counts no use from before it was last done', () => {
    const since = { ...rule, sinceMs: 1000 * MINUTE_MS };
    expect(maintenanceStanding(since, [spell(0, 600)], DAY_MS).usedMinutes).toBe(0);
  });

  it('says overdue hours as hours below nothing, and nothing of what does not matter', () => {
    const byUse = { ...rule, everyDays: null };
    expect(maintenanceStanding(byUse, [spell(0, 300)], DAY_MS)).toMatchObject({
      minutesLeft: -60,
      dueAtMs: null,
    });
  });

  it('never goes back as time passes and use is added', () => {
    fc.assert(
      fc.property(fc.nat(400), fc.nat(400), fc.nat(500), (days, more, minutes) => {
        const early = maintenanceStanding(rule, [], days * DAY_MS);
        const late = maintenanceStanding(rule, [spell(1, minutes)], (days + more) * DAY_MS);
        expect(late.share).toBeGreaterThanOrEqual(early.share);
      }),
    );
  });
});

describe('rotation', () => {
  it('puts those never used first, then the longest idle; ties by inventory number', () => {
    const rig = (inventoryNumber: string, lastUsedAtMs: number | null) => ({
      rigId: inventoryNumber,
      inventoryNumber,
      lastUsedAtMs,
    });
    const order = rotation([rig('R-3', 500), rig('R-2', null), rig('R-4', 100), rig('R-1', 500)]);
    expect(order.map(({ rigId }) => rigId)).toEqual(['R-2', 'R-4', 'R-1', 'R-3']);
  });
});
