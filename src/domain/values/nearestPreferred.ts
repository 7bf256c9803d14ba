import { decimalText } from '../decimal/decimalText.js';

/** A value of a preferred series in some decade. */
export interface PreferredValue {
  /** In the unit of the value asked for, an exact decimal. */
  readonly value: string;
  /** How far it lies from the value asked for, in percent of that; below zero when it is less. */
  readonly differencePercent: number;
}

/**
 * Values of a preferred number series around a value, the nearest first (by ratio of the
 * difference to the value asked for; of two as near, the lower first).
 * @param value more than 0, in any unit
 * @param oneDecade the series as decimals from 1 to below 10: `['1.0', '2.2', '4.7']`
 * @param withinPercent only those as near as this; the nearest is given even if it is farther
 * @throws RangeError when the value is not more than 0, or beyond 1e±30
 * Source of the series: IEC 60063.
 */
export function nearestPreferred(
  value: number,
  oneDecade: readonly string[],
  withinPercent = 0,
): [PreferredValue, ...PreferredValue[]] {
  if (!(value > 1e-30 && value < 1e30)) {
    throw new RangeError('A value must be more than 0, and neither vanishing nor boundless.');
  }
  const decade = Math.floor(Math.log10(value));
  const around = [decade - 1, decade, decade + 1].flatMap((exponent) =>
    oneDecade.map((significand): PreferredValue => {
      const preferred = Number(`${significand}e${exponent}`);
      return {
        value: timesPowerOfTen(significand, exponent),
        differencePercent: ((preferred - value) / value) * 100,
      };
    }),
  );
  const distance = (one: PreferredValue): number => Math.abs(one.differencePercent);
  around.sort(
    (one, other) =>
      distance(one) - distance(other) || one.differencePercent - other.differencePercent,
  );
  const [nearest, ...others] = around;
  if (nearest === undefined) throw new RangeError('The series has no values.');
  // A value given as 20 % away must not be lost to the last digit of a double.
  return [nearest, ...others.filter((one) => distance(one) <= withinPercent + 1e-9)];
}

function timesPowerOfTen(significand: string, exponent: number): string {
  const [whole = '', fraction = ''] = significand.split('.');
  const decimals = fraction.length - exponent;
  const digits = BigInt(whole + fraction);
  return decimals >= 0
    ? decimalText({ coefficient: digits, decimals })
    : decimalText({ coefficient: digits * 10n ** BigInt(-decimals), decimals: 0 });
}
