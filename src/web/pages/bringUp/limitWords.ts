import type { Formats } from '../../locale/formats.js';
import { writtenUnit } from '../../locale/writtenUnit.js';
import type { Texts } from '../../texts/texts.js';

/** The limits of a reading in words: “from 5.67 to 6.93 V”, “at most 0.1 Ω”. */
export function limitWords(
  { lower, upper, unit }: { lower: string | null; upper: string | null; unit: string },
  { bringUp }: Pick<Texts, 'bringUp'>,
  formats: Formats,
): string {
  const written = (end: string) => formats.number(Number(end), 6);
  const withUnit = (end: string) => `${written(end)} ${writtenUnit(unit)}`.trim();
  if (lower !== null && upper !== null) {
    return bringUp.between(written(lower), withUnit(upper));
  }
  if (lower !== null) return bringUp.atLeast(withUnit(lower));
  if (upper !== null) return bringUp.atMost(withUnit(upper));
  return bringUp.noLimit;
}
