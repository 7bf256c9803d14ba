import { decimalText } from '../decimal/decimalText.js';
import { refused, type Decoded } from './decoded.js';

/** Letters of IEC 60062, by the table the caller hands over. */
export interface LetterTable {
  readonly multipliers: readonly { letter: string; exponent: number; unit: string }[];
  readonly tolerances: readonly { letter: string; percent: string; isConfirmed: boolean }[];
}

export interface LetteredValue {
  /** In `unit`, an exact decimal. */
  readonly value: string;
  /** UCUM: Ohm or F. */
  readonly unit: string;
  readonly tolerancePercent: string | null;
  readonly isToleranceConfirmed: boolean;
  /** Which rule read it. */
  readonly rule: 'LETTER_FOR_POINT' | 'THREE_FIGURES';
}

/**
 * Reads a value with a letter in place of the point (4K7, 4R7, R47, 2n2, 47p), and a capacitor's
 * three figures (104: 10 followed by four noughts, in picofarads; common practice of EIA), each
 * perhaps followed by a tolerance letter (4K7J).
 * @param on what is marked; some markings mean one thing on a resistor, another on a capacitor
 */
export function decodeLetters(
  text: string,
  table: LetterTable,
  on: 'RESISTOR' | 'CAPACITOR' | null = null,
): Decoded<LetteredValue> {
  const marking = text.trim().replaceAll('µ', 'u').replaceAll('μ', 'u');
  const threeFigures = /^(\d{2})(\d)([A-Z])?$/.exec(marking);
  const [, significand = '', noughts = '0', letter] = threeFigures ?? [];
  const isOhmsToo = table.multipliers.some((one) => one.letter === letter && one.unit === 'Ohm');
  if (isOhmsToo && letter !== undefined && letter !== 'R' && on === null) {
    return refused(
      `On a resistor “${marking}” is ${significand}${noughts} with the multiplier ${letter}; on a capacitor the ${letter} is a tolerance. Say which it is on.`,
    );
  }
  const isOhms = isOhmsToo && (letter === 'R' || on === 'RESISTOR');
  if (threeFigures && !isOhms) {
    const exponent = noughts === '9' ? -1 : noughts === '8' ? -2 : Number(noughts);
    return withTolerance(significand, '', exponent - 12, 'F', letter, 'THREE_FIGURES', table);
  }
  const lettered = /^(\d*)([A-Za-z])(\d*)([A-Z])?$/.exec(marking);
  const [, whole = '', point = '', fraction = '', tolerance] = lettered ?? [];
  if (whole + fraction === '' || (whole + fraction).length > 6) {
    return refused(
      `“${text.slice(0, 30)}” is no value code. Write it as 4K7, 4R7, R47, 2n2 or 104, with its tolerance letter if it has one.`,
    );
  }
  const meaning =
    table.multipliers.find((one) => one.letter === point) ??
    table.multipliers.find((one) => one.unit === 'Ohm' && one.letter === point.toUpperCase());
  if (!meaning) return refused(`“${point}” stands for no multiplier in “${text.slice(0, 30)}”.`);
  const { exponent, unit } = meaning;
  return withTolerance(whole, fraction, exponent, unit, tolerance, 'LETTER_FOR_POINT', table);
}

function withTolerance(
  whole: string,
  fraction: string,
  exponent: number,
  unit: string,
  letter: string | undefined,
  rule: LetteredValue['rule'],
  table: LetterTable,
): Decoded<LetteredValue> {
  const tolerance = table.tolerances.find((one) => one.letter === letter);
  if (letter !== undefined && !tolerance) return refused(`“${letter}” stands for no tolerance.`);
  const decimals = fraction.length - exponent;
  const coefficient = BigInt(whole + fraction);
  const value = decimalText(
    decimals >= 0
      ? { coefficient, decimals }
      : { coefficient: coefficient * 10n ** BigInt(-decimals), decimals: 0 },
  );
  return {
    kind: 'read',
    value: {
      value,
      unit,
      tolerancePercent: tolerance?.percent ?? null,
      isToleranceConfirmed: tolerance?.isConfirmed ?? true,
      rule,
    },
  };
}
