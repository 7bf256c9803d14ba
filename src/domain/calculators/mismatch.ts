import { BadInputs, checkedInputs, inWatts } from './checkedInputs.js';
import type { Working } from './working.js';

export interface Mismatch {
  readonly swr: number;
  /** Share of the voltage that comes back, 0 to 1. */
  readonly reflection: number;
  /** null for a perfect match, where nothing comes back. */
  readonly returnLossDecibels: number | null;
  readonly reflectedPercent: number;
  readonly mismatchLossDecibels: number;
  readonly working: Working;
}

/**
 * Standing-wave ratio, reflection and return loss from one another: give the ratio, the two powers
 * of a directional meter, or the return loss.
 * @throws BadInputs
 */
export function mismatch(asked: {
  readonly swr: number | null;
  readonly forwardWatts: number | null;
  readonly reflectedWatts: number | null;
  readonly returnLossDecibels: number | null;
}): Mismatch {
  const { swr, forwardWatts, reflectedWatts, returnLossDecibels } = asked;
  const byPower = forwardWatts !== null && reflectedWatts !== null;
  const isHalf = (forwardWatts === null) !== (reflectedWatts === null);
  const ways = [swr !== null, byPower, returnLossDecibels !== null].filter(Boolean).length;
  if (ways !== 1 || isHalf) {
    throw new BadInputs([
      'Give one of the three: swr, forwardWatts with reflectedWatts, or returnLossDecibels.',
    ]);
  }
  const inputs = checkedInputs(
    [
      ...(swr === null ? [] : [{ name: 'swr', value: swr, unit: '1', from: 1, upTo: 1000 }]),
      ...(byPower
        ? [
            inWatts('forwardWatts', forwardWatts),
            { ...inWatts('reflectedWatts', reflectedWatts), isOpen: false },
          ]
        : []),
      ...(returnLossDecibels === null
        ? []
        : [
            {
              name: 'returnLossDecibels',
              value: returnLossDecibels,
              unit: 'dB',
              from: 0,
              upTo: 100,
              isOpen: true,
            },
          ]),
    ],
    [
      byPower &&
        reflectedWatts >= forwardWatts &&
        `reflectedWatts is ${reflectedWatts}; give less than forwardWatts, which is ${forwardWatts}.`,
    ],
  );
  const reflection = byPower
    ? Math.sqrt(reflectedWatts / forwardWatts)
    : swr === null
      ? 10 ** (-(returnLossDecibels as number) / 20)
      : (swr - 1) / (swr + 1);
  return {
    swr: (1 + reflection) / (1 - reflection),
    reflection,
    returnLossDecibels: reflection === 0 ? null : -20 * Math.log10(reflection),
    reflectedPercent: 100 * reflection ** 2,
    mismatchLossDecibels: Math.abs(10 * Math.log10(1 - reflection ** 2)),
    working: {
      formula: 'ρ = (S − 1)/(S + 1) = √(Pr/Pf); RL = −20·log₁₀ρ; loss = −10·log₁₀(1 − ρ²)',
      inputs,
      assumptions: [
        'The meter stands at the load or the line loses nothing: a lossy line shows a better ratio at the set.',
      ],
      sources: ['Theory of transmission lines: handbooks.'],
      cautions: [
        'A tube final stage into a bad match overheats and arcs: tune at low power, into a dummy load first.',
      ],
    },
  };
}
