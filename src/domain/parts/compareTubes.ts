import { compareHeaters, type HeaterSupply } from './compareHeaters.js';
import { tubeClassesServe } from './tubeClassesServe.js';
import type { TubeFigure, TubeRatings } from './tubeRatings.js';
import { withinShare } from './withinShare.js';

/**
 * DIRECT: fits and works as it is. PARALLEL_HEATERS_ONLY: the same, but not in a series string.
 * WITH_CHANGES: fits, and something must be adjusted or watched.
 */
export type ComputedGrade = 'DIRECT' | 'PARALLEL_HEATERS_ONLY' | 'WITH_CHANGES';

/** How a candidate compares with an original, by their ratings. */
export interface Comparison {
  /** null when it does not serve. */
  readonly grade: ComputedGrade | null;
  /** Why it does not serve; empty when it does. */
  readonly whyNot: readonly string[];
  /** What changes for the worse. */
  readonly worse: readonly string[];
  /** What must be checked again after the change. */
  readonly recheck: readonly string[];
  /** What this rests on that no published source confirmed, or that is not known at all. */
  readonly unproven: readonly string[];
}

/** Stated bands. Source: common practice of substitution handbooks (same base, heater, ratings not less). */
export const substitutionBands = {
  transconductanceDirect: [0.8, 1.25],
  transconductanceAtAll: [0.5, 2],
  capacitance: 0.25,
} as const;

/** Compares two tubes for one socket. @param supply how the heaters of the set are fed */
export function compareTubes(
  original: TubeRatings,
  candidate: TubeRatings,
  supply: HeaterSupply,
): Comparison {
  const heaters = compareHeaters(original, candidate, supply);
  const whyNot = [...fitProblems(original, candidate), ...heaters.whyNot];
  const worse = [...heaters.worse];
  const recheck = [...heaters.recheck];
  let changes = false;
  const change = (problem: string, check: string): void => {
    changes = true;
    worse.push(problem);
    recheck.push(check);
  };

  const [offered, wanted] = [candidate.tubeClass?.value, original.tubeClass?.value];
  if (tubeClassesServe(wanted, offered) === 'WITH_CHANGES') {
    change(
      `cutoff differs (${words(offered)} in place of ${words(wanted)})`,
      'gain control and distortion',
    );
  }
  const slope = ratio(original, candidate, 'transconductanceMicrosiemens');
  const { transconductanceDirect, transconductanceAtAll, capacitance } = substitutionBands;
  if (slope !== null && !isWithin(slope, transconductanceAtAll)) {
    whyNot.push(`Its transconductance is ${percent(slope)} of the original's.`);
  } else if (slope !== null && !isWithin(slope, transconductanceDirect)) {
    change(`transconductance ${percent(slope)} of the original's`, 'gain, bias and stability');
  }
  const dissipation = ratio(original, candidate, 'plateDissipationWatts');
  if (dissipation !== null && dissipation < 1) {
    whyNot.push(`Its plate may dissipate only ${percent(dissipation)} of the original's.`);
  }
  const [plateVolts, otherPlateVolts] = [original.plateVolts?.value, candidate.plateVolts?.value];
  if (plateVolts !== undefined && otherPlateVolts !== undefined && otherPlateVolts < plateVolts) {
    change(
      `rated for ${otherPlateVolts} V at the plate, not ${plateVolts} V`,
      'plate voltage in circuit, switching on included',
    );
  }
  for (const figure of ['inputPicofarads', 'outputPicofarads'] as const) {
    const [one, other] = [original[figure]?.value, candidate[figure]?.value];
    if (one !== undefined && other !== undefined && !withinShare(other, one, capacitance)) {
      change(
        `${figure === 'inputPicofarads' ? 'input' : 'output'} capacitance ${other} pF against ${one} pF`,
        'alignment of the tuned circuits',
      );
    }
  }
  const feedback = ratio(original, candidate, 'gridPlatePicofarads');
  if (feedback !== null && feedback > 1 + capacitance) {
    change(
      `grid-plate capacitance ${percent(feedback)} of the original's`,
      'neutralization and stability',
    );
  }
  const grade = changes
    ? 'WITH_CHANGES'
    : heaters.parallelOnly
      ? 'PARALLEL_HEATERS_ONLY'
      : 'DIRECT';
  return {
    grade: whyNot.length > 0 ? null : grade,
    whyNot,
    worse,
    recheck: [...new Set(recheck)],
    unproven: [...unprovenOf(original), ...unprovenOf(candidate)],
  };
}

function fitProblems(original: TubeRatings, candidate: TubeRatings): string[] {
  const problems: string[] = [];
  if (!original.base || !candidate.base) problems.push('The base of one of them is not known.');
  else if (original.base.value !== candidate.base.value) {
    problems.push(
      `Its base is ${candidate.base.value}; the socket is wired for ${original.base.value}.`,
    );
  }
  const [wanted, offered] = [original.tubeClass?.value, candidate.tubeClass?.value];
  if (tubeClassesServe(wanted, offered) === 'NOT') {
    problems.push(`It is a ${words(offered)}; a ${words(wanted)} is wanted.`);
  }
  return problems;
}

/** What decides a grade: the base, the class, the heater, the slope and the dissipation. */
const deciding = [
  'heaterVolts',
  'heaterAmperes',
  'transconductanceMicrosiemens',
  'plateDissipationWatts',
] as const satisfies readonly TubeFigure[];

function unprovenOf(tube: TubeRatings): string[] {
  const facts = { base: tube.base, class: tube.tubeClass };
  const figures = deciding.map((figure) => [inWords(figure), tube[figure]] as const);
  return [...Object.entries(facts), ...figures]
    .filter(([, rated]) => rated?.isConfirmed !== true)
    .map(([name]) => `${name} of ${tube.designation}`);
}

const inWords = (figure: string): string =>
  figure
    .replace(/(Volts|Amperes|Microsiemens|Watts)$/, '')
    .replace('plate', 'plate ')
    .replace('heater', `heater ${figure.endsWith('Volts') ? 'voltage' : 'current'}`)
    .toLowerCase();

function ratio(original: TubeRatings, candidate: TubeRatings, figure: TubeFigure): number | null {
  const [one, other] = [original[figure]?.value, candidate[figure]?.value];
  return one === undefined || other === undefined || one === 0 ? null : other / one;
}

const isWithin = (value: number, [lowest, highest]: readonly [number, number]): boolean =>
  value >= lowest && value <= highest;
const percent = (share: number): string => `${Math.round(share * 100)} %`;
const words = (tubeClass: string | undefined): string =>
  tubeClass === undefined ? 'tube of unknown class' : tubeClass.toLowerCase().replaceAll('_', ' ');
