import { describe, expect, it } from 'vitest';
import { ratedFields } from '../../src/features/reference/readTubes.js';
import { referenceTubeNamed, referenceTubes } from '../../src/features/reference/referenceTubes.js';

/** Figures as published, a table a source; keys of sources as in seed/reference/sources.yaml. */
const published: Record<string, Record<string, Record<string, number | string>>> = {
  'sister-tubes': {
    ...Object.fromEntries(
      ['6C6', '6D6', '6J7', '6K7', '6SJ7', '6SK7', '6AU6', '6BA6'].map((tube) => [
        tube,
        { heaterVolts: 6.3, heaterAmperes: 0.3 },
      ]),
    ),
    '6AC7': { heaterVolts: 6.3, heaterAmperes: 0.45 },
    '6AB7': { heaterVolts: 6.3, heaterAmperes: 0.45 },
    '1L4': { heaterVolts: 1.4, heaterAmperes: 0.05 },
    '1T4': { heaterVolts: 1.4, heaterAmperes: 0.05 },
  },
  'encyclopedia-12ax7': {
    // Slope: amplification 100 over plate resistance 62.5 kΩ.
    '12AX7': {
      heaterVolts: 12.6,
      heaterAmperes: 0.15,
      transconductanceMicrosiemens: 1600,
      plateDissipationWatts: 1,
      plateVolts: 300,
    },
  },
  'encyclopedia-6sn7': {
    '6SN7': {
      base: '8BD',
      heaterVolts: 6.3,
      heaterAmperes: 0.6,
      transconductanceMicrosiemens: 2600,
    },
  },
  'tubeofile-12az7': {
    '12AZ7': {
      heaterVolts: 12.6,
      heaterAmperes: 0.225,
      transconductanceMicrosiemens: 5500,
      base: '9A',
    },
    '12AT7': {
      heaterVolts: 12.6,
      heaterAmperes: 0.15,
      transconductanceMicrosiemens: 5500,
      base: '9A',
    },
  },
  'tubeofile-6by6': { '6BY6': { base: '7CH', plateDissipationWatts: 2, plateVolts: 300 } },
  'tubeofile-5t4': {
    '5T4': { base: '5T', heaterAmperes: 2 },
    '5U4G': { base: '5T', heaterAmperes: 3 },
  },
  'tubeofile-6sj7': { '12SJ7': { heaterVolts: 12.6, heaterAmperes: 0.15 } },
  'tube-of-month-5u4': { '5U4': { heaterAmperes: 3 } },
  'selecting-power-tubes': {
    '6L6': { plateDissipationWatts: 19 },
    '6L6GC': { plateDissipationWatts: 30 },
  },
  'output-tube-dissipation': Object.fromEntries(
    Object.entries({
      '6L6GC': 30,
      '6973': 12,
      '6AQ5': 12,
      '6V6': 14,
      EL34: 25,
      '6550': 42,
      EL84: 12,
      '8417': 35,
      '7591': 19,
      '6146B': 27,
      '6BM8': 7,
    }).map(([tube, plateDissipationWatts]) => [tube, { plateDissipationWatts }]),
  ),
  'tdsl-extract': {
    // Heaters of twin triodes in the other arrangement: 6.3 V at twice the current.
    '12AX7': {
      heaterVolts: 12.6,
      heaterAmperes: 0.15,
      transconductanceMicrosiemens: 1600,
      plateVolts: 300,
    },
    '12AU7': {
      heaterVolts: 12.6,
      heaterAmperes: 0.15,
      transconductanceMicrosiemens: 2200,
      plateDissipationWatts: 2.75,
      plateVolts: 300,
    },
    '12BH7': { transconductanceMicrosiemens: 3100, plateDissipationWatts: 3.5, plateVolts: 450 },
    EL34: {
      heaterVolts: 6.3,
      heaterAmperes: 1.5,
      transconductanceMicrosiemens: 11000,
      plateDissipationWatts: 25,
      plateVolts: 800,
    },
    EL84: {
      heaterVolts: 6.3,
      heaterAmperes: 0.76,
      transconductanceMicrosiemens: 11000,
      plateDissipationWatts: 12,
      plateVolts: 300,
    },
    '6L6': { heaterVolts: 6.3, heaterAmperes: 0.9, plateDissipationWatts: 19, plateVolts: 360 },
    KT88: { heaterVolts: 6.3, heaterAmperes: 1.6, plateDissipationWatts: 42, plateVolts: 800 },
  },
  'load-line-limits': {
    '7025': { plateDissipationWatts: 1, plateVolts: 330 },
    '12AY7': { plateDissipationWatts: 1.5, plateVolts: 300 },
    '6L6GC': { plateDissipationWatts: 30, plateVolts: 500 },
    '6L6': { plateDissipationWatts: 19 },
    '6V6': { plateDissipationWatts: 14 },
  },
  'rectifier-chart': Object.fromEntries(
    ['5R4', '5V4GA', '5Y3'].map((tube) => [tube, { heaterAmperes: 2 }]),
  ),
  'sweep-as-audio': {
    '6V6': { heaterVolts: 6.3, heaterAmperes: 0.45 },
    '6L6': { heaterVolts: 6.3, heaterAmperes: 0.9 },
    '6BQ6GT': { heaterVolts: 6.3, heaterAmperes: 1.2 },
  },
  'encyclopedia-6l6': {
    '6L6GC': {
      heaterVolts: 6.3,
      heaterAmperes: 0.9,
      plateDissipationWatts: 30,
      plateVolts: 500,
    },
  },
  'data-library-6dj8': { '6DJ8': { heaterVolts: 6.3, heaterAmperes: 0.365 } },
  'battery-tubes-3s4': {
    '3S4': { heaterVolts: 2.8, heaterAmperes: 0.05, transconductanceMicrosiemens: 1575 },
    '1T4': { heaterVolts: 1.4, heaterAmperes: 0.05, transconductanceMicrosiemens: 900 },
  },
  'battery-miniatures': { '1R5': { heaterVolts: 1.4, heaterAmperes: 0.05 } },
  'sheet-6cg7eh': { '6CG7': { heaterVolts: 6.3 } },
  'heater-strings': {
    '6HS6': { heaterAmperes: 0.45 },
    '6AU6': { heaterAmperes: 0.3 },
    '12AU7': { heaterAmperes: 0.15 },
    '5814': { heaterAmperes: 0.175 },
  },
};

const figureOf = (tube: string, field: string): number | string | undefined => {
  const own = referenceTubeNamed(tube);
  if (field === 'base') return own?.base;
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

  it('has figures that two independent published tables agree on', () => {
    const twice = referenceTubes.flatMap((tube) =>
      ratedFields.filter((field) => tube.sources[field].length >= 2),
    );
    expect(twice.length).toBeGreaterThanOrEqual(10);
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
