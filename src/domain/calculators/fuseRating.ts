import { checkedInputs, inAmperes } from './checkedInputs.js';
import { localCodesFirst, type Working } from './working.js';

/** R10 steps of miniature fuses in amperes (IEC 60127, from memory). */
const iecSteps = [
  0.1, 0.125, 0.16, 0.2, 0.25, 0.315, 0.4, 0.5, 0.63, 0.8, 1, 1.25, 1.6, 2, 2.5, 3.15, 4, 5, 6.3, 8,
  10, 12.5, 16, 20,
];
/** Sizes customary in the US, in amperes (from memory). */
const usSteps = [
  0.1, 0.125, 0.2, 0.25, 0.3, 0.375, 0.5, 0.75, 1, 1.25, 1.5, 2, 2.5, 3, 4, 5, 6.25, 7, 8, 10, 12,
  15, 20,
];

export interface FuseRating {
  readonly wantedAmperes: number;
  /** The next step up; null beyond the largest. */
  readonly iecAmperes: number | null;
  readonly usAmperes: number | null;
  /** The maker's figure is less: that one counts. */
  readonly isMakersLower: boolean;
  readonly working: Working;
}

/**
 * A line fuse from the current that a set draws when it runs.
 * @param asked.factor how much above the running current; 1.5 is a rule of thumb
 * @param asked.makersAmperes the fuse that the maker names, null where none is known
 * @throws BadInputs
 */
export function fuseRating(asked: {
  readonly runningAmperes: number;
  readonly factor: number;
  readonly makersAmperes: number | null;
}): FuseRating {
  const { runningAmperes, factor, makersAmperes } = asked;
  const inputs = checkedInputs([
    { ...inAmperes('runningAmperes', runningAmperes), upTo: 16 },
    { name: 'factor', value: factor, unit: '1', from: 1, upTo: 3 },
    ...(makersAmperes === null
      ? []
      : [{ ...inAmperes('makersAmperes', makersAmperes), upTo: 100 }]),
  ]);
  const wantedAmperes = runningAmperes * factor;
  const next = (steps: readonly number[]) =>
    steps.find((step) => step >= wantedAmperes - 1e-9) ?? null;
  return {
    wantedAmperes,
    iecAmperes: next(iecSteps),
    usAmperes: next(usSteps),
    isMakersLower: makersAmperes !== null && makersAmperes < wantedAmperes,
    working: {
      formula: 'I = k·I₀, then the next step made',
      inputs,
      assumptions: [
        'A slow fuse, so that it lives through the inrush of cold heaters and filter capacitors.',
        'The running current was measured with the set in order: a fault draws more, and its fuse would be too large.',
      ],
      sources: [
        '150 percent of the running current: rule of thumb, from memory.',
        'Steps of IEC 60127 and sizes customary in the US: from memory.',
      ],
      cautions: [
        'The fuse that the maker names comes first. A larger one protects the wiring no more, and neither does one of the wrong kind.',
        'The fuse belongs in the live conductor, and its voltage rating must be that of the mains or more.',
        localCodesFirst,
      ],
    },
  };
}
