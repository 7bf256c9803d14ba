import { describe, expect, it } from 'vitest';
import { outputQuantity, type OutputReading } from '../../src/domain/capability/measuredOutput.js';
import { outputStanding } from '../../src/domain/capability/outputStanding.js';

const asMade = [
  { band: '40m', mode: 'CW', watts: 50 },
  { band: '20m', mode: 'CW', watts: null },
];
const reading = (more: Partial<OutputReading>): OutputReading => ({
  readingId: 'reading',
  band: '40m',
  mode: null,
  watts: 42,
  takenAtMs: 0,
  ...more,
});

describe('what a rig puts out on a band', () => {
  it('is read from the name of the quantity, however it is spaced', () => {
    expect(outputQuantity('Output  power 40m cw')).toEqual({ band: '40m', mode: 'CW' });
    expect(outputQuantity('output power on 70 cm')).toEqual({ band: '70cm', mode: null });
    expect(outputQuantity('output impedance 40m')).toBeNull();
  });

  it('is as made until a reading says otherwise, and unknown where nobody wrote it down', () => {
    expect(outputStanding(asMade, [], '40m', 'CW')).toMatchObject({ watts: 50, restsOn: 'MODEL' });
    expect(outputStanding(asMade, [], '20m', 'CW')).toMatchObject({
      watts: null,
      restsOn: 'NOTHING',
    });
    expect(outputStanding(asMade, [], '15m', 'CW')).toBeNull();
  });

  it('is the latest reading; of two at one instant the lower', () => {
    const readings = [
      reading({ readingId: 'old', watts: 55 }),
      reading({ readingId: 'high', watts: 44, takenAtMs: 5 }),
      reading({ readingId: 'low', watts: 38, takenAtMs: 5 }),
    ];
    expect(outputStanding(asMade, readings, '40m', 'CW')).toMatchObject({
      watts: 38,
      readingId: 'low',
      isDead: false,
    });
  });

  it('is dead by a reading of nothing, not by an opinion', () => {
    expect(outputStanding(asMade, [reading({ watts: 0 })], '40m', 'CW')).toMatchObject({
      isDead: true,
    });
  });

  it('on a band that the model never had needs a reading that names the mode', () => {
    const band = { band: '15m', watts: 20 };
    expect(outputStanding(asMade, [reading(band)], '15m', 'CW')).toBeNull();
    expect(outputStanding(asMade, [reading({ ...band, mode: 'CW' })], '15m', 'CW')).toMatchObject({
      watts: 20,
      restsOn: 'READING',
    });
    expect(outputStanding(asMade, [reading({ ...band, mode: 'CW' })], '15m', 'SSB')).toBeNull();
  });
});
