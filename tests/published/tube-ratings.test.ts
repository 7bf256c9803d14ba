import { describe, expect, it } from 'vitest';
import { ratedFields } from '../../src/features/reference/readTubes.js';
import { referenceTubeNamed, referenceTubes } from '../../src/features/reference/referenceTubes.js';
import type { PublishedFigures } from '../support/publishedFigures.js';
import { tubeSheets } from '../support/tubeSheets.js';
import { tubeTables } from '../support/tubeTables.js';

/** The catalog's rule: electrodes, hyphen, plate dissipation in watts, a letter. */
const byEimacNumber = Object.fromEntries(
  ['3-400Z', '3-500Z', '4-400A'].map((tube) => [
    tube,
    { plateDissipationWatts: Number(/-(\d+)[A-Z]$/.exec(tube)?.[1]) },
  ]),
);

/** The code's first letter. Twin triodes with a tapped heater count with both halves side by side. */
const heaterOfLetter: Record<string, number> = { E: 6.3, G: 5 };
const byEuropeanCode = Object.fromEntries(
  ['EF95', 'ECC88', 'ECL82', 'EBC90', 'EL90', 'EL34', 'EL84', 'GZ34'].map((tube) => [
    tube,
    { heaterVolts: heaterOfLetter[tube.slice(0, 1)] ?? Number.NaN },
  ]),
);

const published: PublishedFigures = {
  ...tubeSheets,
  ...tubeTables,
  'eimac-numbering': byEimacNumber,
  'european-code': byEuropeanCode,
  'european-code-list': byEuropeanCode,
};

/** Who answers for the figure: sheets of one maker are one voice, and so are points taken from them. */
const voiceOf = (source: string): string =>
  /^(rca|ge|tung-sol|sylvania|westinghouse|philips)-/.exec(source)?.[1] ??
  (source === 'operating-points' ? 'rca' : source.startsWith('european-code') ? 'code' : source);

const figureOf = (tube: string, field: string): number | string | undefined => {
  const own = referenceTubeNamed(tube);
  if (field === 'base' || field === 'class') return own?.[field];
  const figure = own?.figures[field as keyof typeof own.figures];
  return figure === undefined ? undefined : Number(figure);
};

describe('tube ratings of the reference table', () => {
  it('has at least 60 types, each name once', () => {
    const names = referenceTubes.flatMap(({ designation, aliases }) => [designation, ...aliases]);
    expect(referenceTubes.length).toBeGreaterThanOrEqual(60);
    expect(names.filter((name, index) => names.indexOf(name) !== index)).toEqual([]);
  });

  it.each(Object.keys(published))('agrees with every figure taken from %s', (source) => {
    for (const [tube, figures] of Object.entries(published[source] ?? {})) {
      for (const [field, value] of Object.entries(figures)) {
        expect(figureOf(tube, field), `${tube} ${field}`).toBe(value);
      }
    }
  });

  it('calls confirmed only what one of those published tables holds', () => {
    for (const tube of referenceTubes) {
      const names = [tube.designation, ...tube.aliases];
      for (const field of ratedFields.filter((one) => one !== 'class')) {
        const holding = Object.keys(published).filter((source) =>
          names.some((name) => published[source]?.[name]?.[field] !== undefined),
        );
        const named = tube.sources[field].map(({ key }) => key);
        const only = named.filter((key) => !holding.includes(key));
        expect(only, `${tube.designation} ${field}`).toEqual([]);
      }
    }
  });

  it('names the published source of at least one figure of 60 types and more', () => {
    const sourced = referenceTubes.filter(({ sources }) =>
      ratedFields.some((field) => sources[field].some(({ isPublished }) => isPublished)),
    );
    expect(sourced.length).toBeGreaterThanOrEqual(60);
  });

  it('has 20 types and more with a figure that two independent published tables agree on', () => {
    const twice = referenceTubes.filter(({ sources }) =>
      ratedFields.some((field) => new Set(sources[field].map(({ key }) => voiceOf(key))).size >= 2),
    );
    expect(twice.length).toBeGreaterThanOrEqual(20);
  });

  it("heats each receiving tube by its number's leading figures: 6 for 6.3 V, 12 for 12.6 V", () => {
    // RETMA receiving types: figures, letters, one figure. 2E26 and the like are of another scheme.
    const receiving = /^(\d+)[A-Z]{1,2}\d{1}(?!\d)/;
    const held = referenceTubes.filter(({ designation }) => receiving.test(designation));
    expect(held.length).toBeGreaterThan(60);
    for (const { designation, figures } of held) {
      const leading = Number(receiving.exec(designation)?.[1]);
      const volts = Number(figures.heaterVolts ?? 0);
      expect(Math.abs(volts - leading), designation).toBeLessThanOrEqual(leading === 0 ? 0 : 0.61);
    }
  });
});
