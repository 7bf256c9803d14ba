import type { TubeRatings } from './tubeRatings.js';
import { withinShare } from './withinShare.js';

/** PARALLEL: each heater across the supply. SERIES: one current through all of them. */
export type HeaterSupply = 'PARALLEL' | 'SERIES';

interface HeaterComparison {
  readonly whyNot: readonly string[];
  readonly worse: readonly string[];
  readonly recheck: readonly string[];
  /** Its current differs, so that a series string would not bear it. */
  readonly parallelOnly: boolean;
}

/** A heater may differ by so much in volts (parallel) or amperes (series). Common practice, no source. */
const tolerance = 0.05;

/**
 * Compares heaters. A tapped heater may be wired at half its volts and twice its current; the wiring
 * of the socket stays as it is, so both tubes must then be tapped, or both not.
 */
export function compareHeaters(
  original: TubeRatings,
  candidate: TubeRatings,
  supply: HeaterSupply,
): HeaterComparison {
  const [volts, otherVolts] = [original.heaterVolts?.value, candidate.heaterVolts?.value];
  const [amperes, otherAmperes] = [original.heaterAmperes?.value, candidate.heaterAmperes?.value];
  const isCold = [volts, otherVolts, amperes, otherAmperes].every((one) => one === undefined);
  const alike: HeaterComparison = { whyNot: [], worse: [], recheck: [], parallelOnly: false };
  if (isCold) return alike;
  if (
    volts === undefined ||
    otherVolts === undefined ||
    amperes === undefined ||
    otherAmperes === undefined
  ) {
    return { ...alike, whyNot: ['The heater of one of them is not known.'] };
  }
  const whyNot: string[] = [];
  if (original.hasTappedHeater !== candidate.hasTappedHeater) {
    whyNot.push('One heater is tapped and the other is not, so the pins differ.');
  }
  const currentIsAlike = withinShare(otherAmperes, amperes, tolerance);
  if (!withinShare(otherVolts, volts, tolerance)) {
    whyNot.push(`Its heater takes ${otherVolts} V; there are ${volts} V.`);
  }
  if (supply === 'SERIES' && !currentIsAlike) {
    whyNot.push(`Its heater takes ${otherAmperes} A; the series string carries ${amperes} A.`);
  }
  const more = otherAmperes > amperes && !currentIsAlike;
  return {
    whyNot,
    worse: more ? [`heater current ${otherAmperes} A against ${amperes} A`] : [],
    recheck: more ? ['load on the heater winding'] : [],
    parallelOnly: !currentIsAlike,
  };
}
