import type { PublishedFigures } from './publishedFigures.js';

/** What makers' data sheets and manuals print, a sheet a source. */
export const tubeSheets: PublishedFigures = {
  'rca-6sj7': {
    '6SJ7': {
      base: '8N',
      transconductanceMicrosiemens: 1650,
      plateDissipationWatts: 2.5,
      plateVolts: 300,
      class: 'SHARP_PENTODE',
      inputPicofarads: 6,
      outputPicofarads: 7,
      gridPlatePicofarads: 0.005,
    },
  },
  'ge-6sj7': {
    '6SJ7': {
      base: '8N',
      heaterVolts: 6.3,
      heaterAmperes: 0.3,
      transconductanceMicrosiemens: 1650,
      plateDissipationWatts: 2.5,
      plateVolts: 300,
      class: 'SHARP_PENTODE',
    },
    '12SJ7': {
      heaterVolts: 12.6,
      heaterAmperes: 0.15,
      base: '8N',
      transconductanceMicrosiemens: 1650,
      plateDissipationWatts: 2.5,
      plateVolts: 300,
      class: 'SHARP_PENTODE',
    },
  },
  'rca-6sq7': {
    '6SQ7': {
      base: '8Q',
      heaterVolts: 6.3,
      heaterAmperes: 0.3,
      transconductanceMicrosiemens: 1100,
      plateVolts: 300,
      class: 'DIODE_TRIODE',
    },
  },
  'tung-sol-6sq7': {
    '6SQ7': {
      heaterVolts: 6.3,
      heaterAmperes: 0.3,
      transconductanceMicrosiemens: 1100,
      plateVolts: 300,
      class: 'DIODE_TRIODE',
    },
  },
  'rca-6sl7': {
    '6SL7': {
      base: '8BD',
      transconductanceMicrosiemens: 1600,
      plateDissipationWatts: 1,
      plateVolts: 300,
      class: 'TWIN_TRIODE',
    },
  },
  'tung-sol-6sl7': {
    '6SL7': {
      base: '8BD',
      transconductanceMicrosiemens: 1600,
      plateDissipationWatts: 1,
      plateVolts: 300,
      class: 'TWIN_TRIODE',
    },
  },
  'rca-6at6': {
    '6AT6': { base: '7BT', class: 'DIODE_TRIODE' },
  },
  'ge-6at6': {
    '6AT6': { base: '7BT', plateDissipationWatts: 0.5, plateVolts: 300, class: 'DIODE_TRIODE' },
  },
  'rca-rc-19': {
    '6AT6': { transconductanceMicrosiemens: 1200 },
    '12AX7': { transconductanceMicrosiemens: 1600 },
    '12AY7': { transconductanceMicrosiemens: 1750 },
    '6V6GT': { transconductanceMicrosiemens: 4100 },
    '12AU7': { transconductanceMicrosiemens: 2200 },
  },
  'rca-5y3gt': {
    '5Y3GT': { base: '5T', class: 'FULL_WAVE_RECTIFIER' },
  },
  'rca-5u4gb': {
    '5U4GB': { base: '5T', class: 'FULL_WAVE_RECTIFIER' },
  },
  'ge-5ar4': {
    '5AR4': { base: '5DA', class: 'FULL_WAVE_RECTIFIER' },
  },
  'rca-6973': {
    '6973': {
      base: '9EU',
      heaterVolts: 6.3,
      heaterAmperes: 0.45,
      transconductanceMicrosiemens: 4800,
      plateDissipationWatts: 12,
      plateVolts: 440,
      class: 'BEAM_POWER',
    },
  },
  'rca-rc-30': {
    '6973': { base: '9EU' },
  },
  'tung-sol-7591': {
    '7591': {
      heaterVolts: 6.3,
      heaterAmperes: 0.8,
      transconductanceMicrosiemens: 10200,
      plateDissipationWatts: 19,
      plateVolts: 550,
      class: 'BEAM_POWER',
    },
  },
  'sylvania-7591': {
    '7591': { transconductanceMicrosiemens: 10200, plateDissipationWatts: 19, plateVolts: 550 },
  },
  'westinghouse-7591a': {
    '7591A': { base: '8KQ', transconductanceMicrosiemens: 10200 },
  },
  'ge-6v6gt': {
    '6V6GT': { base: '7AC', heaterVolts: 6.3, heaterAmperes: 0.45, class: 'BEAM_POWER' },
  },
  'rca-6v6': {
    '6V6': { base: '7AC' },
  },
  'tung-sol-5881': {
    '5881': { base: '7AC', plateDissipationWatts: 23, plateVolts: 400, class: 'BEAM_POWER' },
  },
  'rca-6cg7': {
    '6CG7': {
      base: '9AJ',
      transconductanceMicrosiemens: 2600,
      plateDissipationWatts: 4,
      plateVolts: 330,
      class: 'TWIN_TRIODE',
    },
  },
  'tung-sol-6cg7': {
    '6CG7': { base: '9AJ', heaterVolts: 6.3, heaterAmperes: 0.6 },
  },
  'rca-12at7': {
    '12AT7': { base: '9A', transconductanceMicrosiemens: 5500, class: 'TWIN_TRIODE' },
  },
  'ge-12at7': {
    '12AT7': {
      heaterVolts: 12.6,
      heaterAmperes: 0.15,
      plateDissipationWatts: 2.5,
      plateVolts: 300,
    },
  },
  'rca-12ay7': {
    '12AY7': { base: '9A', plateDissipationWatts: 1.5, plateVolts: 300, class: 'TWIN_TRIODE' },
  },
  'rca-12au7a': {
    '12AU7A': {
      base: '9A',
      heaterVolts: 12.6,
      heaterAmperes: 0.15,
      transconductanceMicrosiemens: 2200,
      plateDissipationWatts: 2.75,
      class: 'TWIN_TRIODE',
    },
  },
  'rca-12ax7a': {
    '12AX7A': { base: '9A', class: 'TWIN_TRIODE' },
  },
  'ge-12ax7': {
    '12AX7': { plateDissipationWatts: 1, plateVolts: 300 },
  },
  'rca-6l6gc': {
    '6L6GC': {
      base: '7AC',
      transconductanceMicrosiemens: 6000,
      plateDissipationWatts: 30,
      plateVolts: 500,
      class: 'BEAM_POWER',
    },
  },
  'rca-6l6g': {
    '6L6G': { base: '7AC' },
  },
  'philips-el34': {
    EL34: { plateDissipationWatts: 25, plateVolts: 800, class: 'POWER_PENTODE' },
  },
  'philips-el84': {
    EL84: {
      transconductanceMicrosiemens: 11300,
      plateDissipationWatts: 12,
      plateVolts: 300,
      class: 'POWER_PENTODE',
    },
  },
  'rca-6bq5': {
    '6BQ5': { base: '9CV', transconductanceMicrosiemens: 11300 },
  },
};
