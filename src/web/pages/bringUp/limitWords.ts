import type { Formats } from '../../locale/formats.js';
import { withUnit } from '../../locale/writtenUnit.js';
import type { Texts } from '../../texts/texts.js';

/** The limits of a reading in words: “from 5.67 to 6.93 V”, “at most 0.1 Ω”. */
export function limitWords(
  { lower, upper, unit }: { lower: string | null; upper: string | null; unit: string },
  { bringUp }: Pick<Texts, 'bringUp'>,
  formats: Formats,
): string {
  const written = (end: string) => formats.number(Number(end), 6);
  const inUnit = (end: string) => withUnit(written(end), unit);
  if (lower !== null && upper !== null) {
    return bringUp.between(written(lower), inUnit(upper));
  }
  if (lower !== null) return bringUp.atLeast(inUnit(lower));
  if (upper !== null) return bringUp.atMost(inUnit(upper));
  return bringUp.noLimit;
}
