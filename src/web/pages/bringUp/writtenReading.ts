import type { Formats } from '../../locale/formats.js';
import { withUnit } from '../../locale/writtenUnit.js';

/** A reading as people write it: “earth bond resistance 0.05 Ω”. */
export const writtenReading = (
  { quantity, value, unit }: { quantity: string; value: string; unit: string },
  formats: Formats,
): string => `${quantity} ${withUnit(formats.number(Number(value), 6), unit)}`;
