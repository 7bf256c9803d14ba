import type { TubeClass } from './tubeClass.js';

/** The figures of a tube, each named with its unit. */
export const tubeFigures = [
  'heaterVolts',
  'heaterAmperes',
  'transconductanceMicrosiemens',
  'plateDissipationWatts',
  'plateVolts',
  'inputPicofarads',
  'outputPicofarads',
  'gridPlatePicofarads',
] as const;
export type TubeFigure = (typeof tubeFigures)[number];

/** A rating, and whether a published source has been compared with it. */
export interface Rated<Value> {
  readonly value: Value;
  readonly isConfirmed: boolean;
}

/** What is known of a tube type; what is not known is missing. */
export interface TubeRatings extends Partial<Readonly<Record<TubeFigure, Rated<number>>>> {
  readonly designation: string;
  readonly tubeClass?: Rated<TubeClass>;
  /** Basing code: what pin is what, such as 7BK. Two tubes with one code have the same connections. */
  readonly base?: Rated<string>;
  /** The heater also works at half its volts and twice its amperes. */
  readonly hasTappedHeater: boolean;
}
