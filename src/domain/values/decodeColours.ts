import { decimalText } from '../decimal/decimalText.js';
import { refused, type Decoded } from './decoded.js';

/** What a colour stands for. Source: IEC 60062, by the table the caller hands over. */
export interface ColourMeaning {
  readonly colour: string;
  /** As a figure; null where it is none. */
  readonly digit: number | null;
  /** Power of ten as a multiplier; null where it is none. */
  readonly exponent: number | null;
  readonly tolerancePercent: string | null;
  readonly isToleranceConfirmed: boolean;
  readonly ppmPerKelvin: number | null;
}

export interface ColouredValue {
  /** Ohms, an exact decimal. */
  readonly ohms: string;
  readonly tolerancePercent: string | null;
  /** False where published charts disagree about this colour as a tolerance. */
  readonly isToleranceConfirmed: boolean;
  readonly ppmPerKelvin: number | null;
}

const noBand = 'NONE';

/**
 * Reads the colours of a resistor from the end with the bands: two figures, multiplier and perhaps
 * tolerance (3 or 4 bands), or three figures, multiplier, tolerance and perhaps temperature
 * coefficient (5 or 6). Without a tolerance band it is 20 %.
 * For the old body-end-dot marking give body, end, dot and the other end's metal as four colours.
 */
export function decodeColours(
  bands: readonly string[],
  table: readonly ColourMeaning[],
): Decoded<ColouredValue> {
  if (bands.length < 3 || bands.length > 6) {
    return refused(`There are 3 to 6 colours on a resistor; these are ${bands.length}.`);
  }
  const meanings = new Map(table.map((one) => [one.colour, one]));
  const figures = bands.length >= 5 ? 3 : 2;
  const at = (index: number): ColourMeaning | undefined => meanings.get(bands[index] ?? noBand);
  let significand = 0n;
  for (let index = 0; index < figures; index++) {
    const digit = at(index)?.digit ?? null;
    if (digit === null)
      return refused(`${named(bands[index])} stands for no figure (band ${index + 1}).`);
    significand = significand * 10n + BigInt(digit);
  }
  const exponent = at(figures)?.exponent ?? null;
  if (exponent === null) return refused(`${named(bands[figures])} stands for no multiplier.`);
  const tolerance = at(figures + 1);
  if (!tolerance?.tolerancePercent) {
    return refused(
      `${named(bands[figures + 1])} stands for no tolerance. Is it the other way round?`,
    );
  }
  const coefficient = bands.length === 6 ? at(5) : undefined;
  if (coefficient?.ppmPerKelvin === null) {
    return refused(`${named(bands[5])} stands for no temperature coefficient.`);
  }
  return {
    kind: 'read',
    value: {
      ohms: decimalText(
        exponent < 0
          ? { coefficient: significand, decimals: -exponent }
          : { coefficient: significand * 10n ** BigInt(exponent), decimals: 0 },
      ),
      tolerancePercent: tolerance.tolerancePercent,
      isToleranceConfirmed: tolerance.isToleranceConfirmed,
      ppmPerKelvin: coefficient?.ppmPerKelvin ?? null,
    },
  };
}

const named = (colour: string | undefined): string => (colour ?? 'no colour').toLowerCase();
