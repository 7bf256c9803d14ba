import type { PublishedFigures } from './publishedFigures.js';

/** What tables, articles and data bases of others say, a source a table. */
export const tubeTables: PublishedFigures = {
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
    // Its slope is rounded there to 11 mA/V; the makers' sheets print 11.3.
    EL84: {
      heaterVolts: 6.3,
      heaterAmperes: 0.76,
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
  'class-a-pentodes': {
    '12BY7A': { plateDissipationWatts: 6.5 },
    '6AK6': { plateDissipationWatts: 2.75 },
    '6CL6': { plateDissipationWatts: 7.5 },
    '6AU6': { plateDissipationWatts: 3.5 },
    '6DQ5': { plateDissipationWatts: 24 },
    '6JE6': { plateDissipationWatts: 24 },
    '6L6': { plateDissipationWatts: 19 },
    '6SH7': { plateDissipationWatts: 3 },
    '6SJ7': { plateDissipationWatts: 2.5 },
    '6U8': { plateDissipationWatts: 3 },
  },
  'el95-substitutes': {
    '6AQ5': { heaterAmperes: 0.45 },
  },
  'load-line-files': {
    '5751': { plateDissipationWatts: 0.8, plateVolts: 330 },
    '5881': { heaterVolts: 6.3, heaterAmperes: 0.9, plateDissipationWatts: 23 },
    '6J6': {
      heaterVolts: 6.3,
      heaterAmperes: 0.45,
      plateDissipationWatts: 1.5,
      plateVolts: 300,
      inputPicofarads: 2.2,
      outputPicofarads: 0.4,
      gridPlatePicofarads: 1.6,
    },
    '6CG7': { heaterVolts: 6.3, heaterAmperes: 0.6, plateDissipationWatts: 4, plateVolts: 330 },
    '12AY7': {
      heaterVolts: 12.6,
      heaterAmperes: 0.15,
      plateDissipationWatts: 1.5,
      plateVolts: 300,
      inputPicofarads: 1.3,
      outputPicofarads: 0.6,
      gridPlatePicofarads: 1.3,
    },
    KT88: { heaterVolts: 6.3, heaterAmperes: 1.6 },
    '6BQ5': { heaterVolts: 6.3, heaterAmperes: 0.76, plateDissipationWatts: 12, plateVolts: 300 },
  },
  'operating-points': {
    '12AX7': { transconductanceMicrosiemens: 1600 },
    '6SL7GT': { transconductanceMicrosiemens: 1600 },
    '12AY7': { transconductanceMicrosiemens: 1750 },
    '12AT7': { transconductanceMicrosiemens: 5500 },
    '12AU7': { transconductanceMicrosiemens: 2200 },
    '6SN7GT': { transconductanceMicrosiemens: 2600 },
    EL84: { transconductanceMicrosiemens: 11300 },
    EL34: { transconductanceMicrosiemens: 11000 },
    '6V6GT': { transconductanceMicrosiemens: 4100 },
    '6L6GC': { transconductanceMicrosiemens: 6000 },
    ECC88: { transconductanceMicrosiemens: 12500 },
    ECL82: { transconductanceMicrosiemens: 7500 },
  },
};
