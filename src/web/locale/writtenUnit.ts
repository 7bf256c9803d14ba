/** UCUM’s names of units that people write otherwise; longer ones first. */
const written: readonly (readonly [RegExp, string])[] = [
  [/Ohm\b/g, 'Ω'],
  [/\bu(?=[A-Z])/g, 'µ'],
  [/\bCel\b/g, '°C'],
];

/** A unit as people write it; nothing for the unit of a bare number (UCUM's 1). */
export const writtenUnit = (unit: string): string =>
  unit === '1' ? '' : written.reduce((text, [from, to]) => text.replace(from, to), unit);
