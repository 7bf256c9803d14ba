import type { Formats } from '../../locale/formats.js';
import { writtenUnit } from '../../locale/writtenUnit.js';

/** A reading as people write it: “earth bond resistance 0.05 Ω”. */
export const writtenReading = (
  { quantity, value, unit }: { quantity: string; value: string; unit: string },
  formats: Formats,
): string => `${quantity} ${formats.number(Number(value), 6)} ${writtenUnit(unit)}`.trim();
