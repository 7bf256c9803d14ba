import { capacitorThresholds, isOver, type CapacitorThreshold } from './capacitorThresholds.js';
import { checkedInputs, inMicrofarads, inOhms, inVolts } from './checkedInputs.js';
import { storedEnergy } from './storedEnergy.js';
import { localCodesFirst, type Working } from './working.js';

export interface DischargeAsked {
  /** All capacitors of the bank in parallel. */
  readonly microfarads: number;
  readonly startVolts: number;
  readonly targetVolts: number;
  readonly bleederOhms: number;
}

/** How a bank stands to one published threshold. */
export interface ThresholdStanding extends CapacitorThreshold {
  readonly isOverAtStart: boolean;
  readonly isOverAtTarget: boolean;
  /** Seconds from switching off until the bank is under the line; 0 when it always was. */
  readonly secondsUntilUnder: number;
  /** Under it at the target voltage, and within the time where the rule names one. */
  readonly isKept: boolean;
}

export interface DischargeTime {
  readonly seconds: number;
  readonly timeConstantSeconds: number;
  readonly joulesAtStart: number;
  readonly joulesAtTarget: number;
  /** What the bleeder turns to heat while the set is on, in watts. */
  readonly bleederWatts: number;
  readonly thresholds: readonly ThresholdStanding[];
  /** The rule that asks for the longest wait; null when none is over at the start. */
  readonly longestWait: ThresholdStanding | null;
  readonly working: Working;
}

/** Seconds in which a bank falls from one voltage to another through a resistor: R·C·ln(V₀/V). */
export const secondsToFall = (
  ohms: number,
  microfarads: number,
  fromVolts: number,
  toVolts: number,
): number => (fromVolts <= toVolts ? 0 : ohms * microfarads * 1e-6 * Math.log(fromVolts / toVolts));

/**
 * What a bank of capacitors stores, and how long a bleeder takes to bring it to a stated voltage.
 * @throws BadInputs
 * Source: the law of exponential discharge, any textbook of physics.
 */
export function dischargeTime(asked: DischargeAsked): DischargeTime {
  const { microfarads, startVolts, targetVolts, bleederOhms } = asked;
  const inputs = checkedInputs(
    [
      inMicrofarads('microfarads', microfarads),
      inVolts('startVolts', startVolts),
      inVolts('targetVolts', targetVolts),
      inOhms('bleederOhms', bleederOhms),
    ],
    [
      targetVolts >= startVolts &&
        `targetVolts is ${targetVolts}; give less than startVolts, which is ${startVolts}.`,
    ],
  );
  const until = (volts: number) => secondsToFall(bleederOhms, microfarads, startVolts, volts);
  const thresholds = capacitorThresholds(microfarads, startVolts).map((threshold) => {
    const secondsUntilUnder = until(threshold.volts);
    const isOverAtTarget = isOver(threshold, targetVolts);
    const { allowedSeconds } = threshold;
    const isKept = allowedSeconds === null ? !isOverAtTarget : secondsUntilUnder <= allowedSeconds;
    const isOverAtStart = isOver(threshold, startVolts);
    return { ...threshold, isOverAtStart, isOverAtTarget, secondsUntilUnder, isKept };
  });
  const [longest] = thresholds
    .filter(({ isOverAtStart }) => isOverAtStart)
    .sort((one, other) => other.secondsUntilUnder - one.secondsUntilUnder);
  return {
    seconds: until(targetVolts),
    timeConstantSeconds: bleederOhms * microfarads * 1e-6,
    joulesAtStart: storedEnergy(microfarads, startVolts),
    joulesAtTarget: storedEnergy(microfarads, targetVolts),
    bleederWatts: (startVolts * startVolts) / bleederOhms,
    thresholds,
    longestWait: longest ?? null,
    working: {
      formula: 't = R·C·ln(V₀/V); E = C·V²/2; P = V₀²/R',
      inputs,
      assumptions: [
        'The bleeder has the value given and is whole; nothing else discharges the bank.',
        'The capacitance is the one given: old electrolytics may lie far above their marking, and the time grows with them.',
      ],
      sources: ['Law of exponential discharge: textbooks of physics.'],
      cautions: [
        'A bleeder that is open gives no sign of itself. Measure the voltage across every capacitor each time.',
        'A capacitor recovers a part of its charge after it was discharged. Leave it bridged while you work.',
        'The thresholds differ: keep to the strictest that applies where you are.',
        localCodesFirst,
      ],
    },
  };
}
