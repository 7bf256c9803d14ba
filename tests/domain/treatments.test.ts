import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compareDecimals } from '../../src/domain/decimal/compareDecimals.js';
import { agentsMeeting, successiveMeetings } from '../../src/domain/treatments/agentsMeeting.js';
import { dilutionVolumes } from '../../src/domain/treatments/dilutionVolumes.js';

describe('diluting an agent', () => {
  it('makes a litre of one part to nine from 100 ml and 900 ml', () => {
    expect(dilutionVolumes('1', '9', '1000')).toEqual({ agent: '100', water: '900' });
    expect(dilutionVolumes('1', '1', '0.5')).toEqual({ agent: '0.25', water: '0.25' });
    expect(dilutionVolumes('1', '2', '100')).toEqual({ agent: '33.333', water: '66.667' });
    expect(dilutionVolumes('1', '0', '5')).toEqual({ agent: '5', water: '0' });
  });

  it('adds up to the amount, whatever the parts', () => {
    const parts = fc.integer({ min: 1, max: 9999 });
    fc.assert(
      fc.property(parts, parts, parts, (agentParts, waterParts, amount) => {
        const volumes = dilutionVolumes(String(agentParts), String(waterParts), String(amount));
        const sum = Number(volumes.agent) + Number(volumes.water);
        expect(sum).toBeCloseTo(amount, 9);
        expect(compareDecimals(volumes.agent, '0')).toBeGreaterThanOrEqual(0);
        expect(compareDecimals(volumes.water, '0')).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  it('refuses no agent, no amount and what is no number', () => {
    expect(() => dilutionVolumes('0', '9', '1')).toThrow(RangeError);
    expect(() => dilutionVolumes('1', '9', '0')).toThrow(RangeError);
    expect(() => dilutionVolumes('1', '-9', '1')).toThrow(RangeError);
    expect(() => dilutionVolumes('1', 'nine', '1')).toThrow(/decimal number/);
  });
});

describe('agents that must not meet', () => {
  const pairs = [
    { agents: ['CHLORINE_BLEACH', 'AMMONIA'], why: 'chloramine gas' },
    { agents: ['CHLORINE_BLEACH', 'ACID'], why: 'chlorine gas' },
  ] as const;

  it('are named when they are used together, in whatever order', () => {
    expect(agentsMeeting(['ACID', 'WATER', 'CHLORINE_BLEACH'], pairs)).toEqual([pairs[1]]);
    expect(agentsMeeting(['ACID', 'WATER'], pairs)).toEqual([]);
  });

  it('are found in successive treatments of one surface, until it is rinsed', () => {
    const treatment = (treatmentId: string, agent: string, atMs: number, isRinsed = false) => ({
      treatmentId,
      surfaceKey: 'lid',
      agents: [agent],
      isRinsed,
      treatedAtMs: atMs,
    });
    const bleach = treatment('bleach', 'CHLORINE_BLEACH', 1);
    const acid = treatment('acid', 'ACID', 3);
    const found = successiveMeetings([acid, bleach], pairs);
    expect(found.get('acid')).toEqual([{ earlierId: 'bleach', pair: pairs[1] }]);
    expect(found.has('bleach')).toBe(false);
    expect(successiveMeetings([{ ...bleach, isRinsed: true }, acid], pairs).size).toBe(0);
    const water = treatment('water', 'WATER', 2, true);
    expect(successiveMeetings([bleach, water, acid], pairs).size).toBe(0);
    const elsewhere = { ...acid, surfaceKey: 'base' };
    expect(successiveMeetings([bleach, elsewhere], pairs).size).toBe(0);
  });
});
