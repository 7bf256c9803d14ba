import { nearestPreferred } from '../values/nearestPreferred.js';
import { checkedInputs, inMicrofarads, inVolts } from './checkedInputs.js';
import { secondsToFall } from './dischargeTime.js';
import { localCodesFirst, type Working } from './working.js';

export interface BleederAsked {
  readonly microfarads: number;
  readonly workingVolts: number;
  readonly targetVolts: number;
  readonly withinSeconds: number;
}

export interface BleederResistor {
  /** The largest value that is fast enough. */
  readonly mostOhms: number;
  readonly wattsAtMostOhms: number;
  /** The next lower value that is made, with what it does. */
  readonly madeOhms: number;
  readonly madeWatts: number;
  readonly madeSeconds: number;
  readonly drawMilliamperes: number;
  /** The rating to buy, in watts: at least twice the heat. */
  readonly ratedWatts: number;
  readonly working: Working;
}

/** A resistor that runs at half its rating in free air stays cool enough (common practice, no source). */
const ratingFactor = 2;

/**
 * The bleeder that brings a bank to a stated voltage in a stated time, and the heat that it makes.
 * @param oneDecade the preferred series to choose from, from 1 to below 10
 * @throws BadInputs
 */
export function bleederResistor(
  asked: BleederAsked,
  oneDecade: readonly string[],
): BleederResistor {
  const { microfarads, workingVolts, targetVolts, withinSeconds } = asked;
  const inputs = checkedInputs(
    [
      inMicrofarads('microfarads', microfarads),
      inVolts('workingVolts', workingVolts),
      inVolts('targetVolts', targetVolts),
      { name: 'withinSeconds', value: withinSeconds, unit: 's', from: 0.1, upTo: 3600 },
    ],
    [
      targetVolts >= workingVolts &&
        `targetVolts is ${targetVolts}; give less than workingVolts, which is ${workingVolts}.`,
    ],
  );
  const mostOhms = withinSeconds / secondsToFall(1, microfarads, workingVolts, targetVolts);
  const lower = nearestPreferred(mostOhms, oneDecade, 100).find(
    ({ differencePercent }) => differencePercent <= 1e-9,
  );
  if (!lower) throw new Error('a preferred series has a value below any other');
  const madeOhms = Number(lower.value);
  const heat = (ohms: number) => (workingVolts * workingVolts) / ohms;
  return {
    mostOhms,
    wattsAtMostOhms: heat(mostOhms),
    madeOhms,
    madeWatts: heat(madeOhms),
    madeSeconds: secondsToFall(madeOhms, microfarads, workingVolts, targetVolts),
    drawMilliamperes: (workingVolts / madeOhms) * 1000,
    ratedWatts: ratingFactor * heat(madeOhms),
    working: {
      formula: 'R = t/(C·ln(V₀/V)); P = V₀²/R; I = V₀/R',
      inputs,
      assumptions: [
        'The value made is the next lower one of the series, so that it is fast enough.',
        'A resistor of twice the wattage runs at half its rating.',
      ],
      sources: [
        'Law of exponential discharge: textbooks of physics.',
        'Series of values: IEC 60063.',
        'Twice the wattage: common practice, no source.',
      ],
      cautions: [
        'A resistor has a highest voltage of its own, whatever its wattage: above it put several in series.',
        'One bleeder alone may fail open. Two in parallel, and a measurement each time, are the usual remedy.',
        localCodesFirst,
      ],
    },
  };
}
