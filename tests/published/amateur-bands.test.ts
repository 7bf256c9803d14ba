import { describe, expect, it } from 'vitest';
import { amateurBands, bandNamed } from '../../src/features/reference/amateurBands.js';

/** ADIF specification 3.0.8, enumeration of bands, edges in MHz. */
const adif: Record<string, [number, number]> = {
  '2200m': [0.1357, 0.1378],
  '630m': [0.472, 0.479],
  '160m': [1.8, 2.0],
  '80m': [3.5, 4.0],
  '60m': [5.06, 5.45],
  '40m': [7.0, 7.3],
  '30m': [10.1, 10.15],
  '20m': [14.0, 14.35],
  '17m': [18.068, 18.168],
  '15m': [21.0, 21.45],
  '12m': [24.89, 24.99],
  '10m': [28.0, 29.7],
  '6m': [50, 54],
};

describe('amateur bands by ITU region', () => {
  it.each(Object.entries(adif))(
    '%s lies within the edges that ADIF 3.0.8 gives it',
    (band, [lower, upper]) => {
      const own = amateurBands.filter((one) => one.band === band);
      expect(own.map(({ region }) => region).sort()).toEqual([1, 2, 3]);
      for (const { lowerKilohertz, upperKilohertz } of own) {
        expect(Number(lowerKilohertz)).toBeGreaterThanOrEqual(lower * 1000);
        expect(Number(upperKilohertz)).toBeLessThanOrEqual(upper * 1000);
      }
    },
  );

  it('knows 80 m as the ITU table has it: 3800, 4000 and 3900 kHz in Regions 1, 2 and 3', () => {
    const upper = ([1, 2, 3] as const).map((region) => bandNamed('80m', region)?.upperKilohertz);
    expect(upper).toEqual(['3800', '4000', '3900']);
  });

  it('calls a band by its wavelength: 300 000 km/s over its middle, within a third', () => {
    for (const { band, lowerKilohertz, upperKilohertz } of amateurBands) {
      const metres = Number.parseFloat(band) / (band.endsWith('cm') ? 100 : 1);
      const middle = (Number(lowerKilohertz) + Number(upperKilohertz)) / 2;
      expect(299_792.458 / middle / metres, band).toBeGreaterThan(0.75);
      expect(299_792.458 / middle / metres, band).toBeLessThan(1.34);
    }
  });

  it('does not let bands of one region overlap, and names a published source for each', () => {
    for (const region of [1, 2, 3]) {
      const own = amateurBands.filter((one) => one.region === region);
      own.slice(1).forEach((next, index) => {
        expect(Number(own[index]!.upperKilohertz)).toBeLessThan(Number(next.lowerKilohertz));
      });
      for (const { sources } of own)
        expect(sources.every(({ isPublished }) => isPublished)).toBe(true);
    }
  });
});
