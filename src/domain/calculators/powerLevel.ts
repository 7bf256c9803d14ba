import { BadInputs, checkedInputs, inOhms, inVolts, inWatts } from './checkedInputs.js';
import type { Working } from './working.js';

export interface PowerLevel {
  readonly dbm: number;
  readonly watts: number;
  readonly voltsRms: number;
  readonly voltsPeakToPeak: number;
  readonly working: Working;
}

/**
 * One and the same power as a level, in watts and as a voltage across a load; one of three is given.
 * @param asked.ohms the load; 50 in most stations
 * @throws BadInputs, also when none or several are given
 */
export function powerLevel(asked: {
  readonly dbm: number | null;
  readonly watts: number | null;
  readonly voltsRms: number | null;
  readonly ohms: number;
}): PowerLevel {
  const { dbm, watts, voltsRms, ohms } = asked;
  const given = [dbm, watts, voltsRms].filter((one) => one !== null);
  if (given.length !== 1) {
    throw new BadInputs([`Give one of dbm, watts and voltsRms; these are ${given.length}.`]);
  }
  const inputs = checkedInputs([
    { ...inOhms('ohms', ohms), upTo: 1e6 },
    ...(dbm === null ? [] : [{ name: 'dbm', value: dbm, unit: 'dBm', from: -200, upTo: 90 }]),
    ...(watts === null ? [] : [inWatts('watts', watts)]),
    ...(voltsRms === null ? [] : [inVolts('voltsRms', voltsRms)]),
  ]);
  const power =
    watts ?? (dbm === null ? (voltsRms as number) ** 2 / ohms : 10 ** ((dbm - 30) / 10));
  const rms = Math.sqrt(power * ohms);
  return {
    dbm: 10 * Math.log10(power) + 30,
    watts: power,
    voltsRms: rms,
    voltsPeakToPeak: 2 * Math.SQRT2 * rms,
    working: {
      formula: 'P = V²/R; dBm = 10·log₁₀(P/1 mW); Vpp = 2√2·V',
      inputs,
      assumptions: ['A sine wave, and a load without reactance.'],
      sources: ['Definition of the level in decibels above a milliwatt.'],
      cautions: ['Radio-frequency voltage burns at the touch: measure into a dummy load.'],
    },
  };
}
