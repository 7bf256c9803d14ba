import type { Comparison } from './compareTubes.js';
import { withinShare } from './withinShare.js';

/** What a capacitor is marked with. */
export interface CapacitorRatings {
  readonly farads: number;
  readonly workingVolts: number | null;
}

/** How far the capacitance may lie off and still serve as it is. Customary for paper capacitors. */
const direct = 0.2;
const atAll = 0.5;

/** A capacitor serves with a voltage not less and about the same capacitance. */
export function compareCapacitors(
  original: CapacitorRatings,
  candidate: CapacitorRatings,
): Comparison {
  const whyNot: string[] = [];
  const [volts, otherVolts] = [original.workingVolts, candidate.workingVolts];
  if (volts === null || otherVolts === null) {
    whyNot.push('The working voltage of one of them is not known.');
  } else if (otherVolts < volts) {
    whyNot.push(`It bears ${otherVolts} V; the original bears ${volts} V.`);
  }
  const share = Math.round((candidate.farads / original.farads) * 100);
  const isNear = withinShare(candidate.farads, original.farads, direct);
  if (!withinShare(candidate.farads, original.farads, atAll)) {
    whyNot.push(`Its capacitance is ${share} % of the original's.`);
  }
  return {
    grade: whyNot.length > 0 ? null : isNear ? 'DIRECT' : 'WITH_CHANGES',
    whyNot,
    worse: isNear ? [] : [`capacitance ${share} % of the original's`],
    recheck: isNear ? [] : ['time constants, tuning and hum'],
    unproven: [],
  };
}
