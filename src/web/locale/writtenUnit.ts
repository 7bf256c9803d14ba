/**
 * A unit as the trade writes it (µF, kΩ, °C, m²) from its UCUM code (uF, kOhm, Cel, m2): symbols of
 * the SI Brochure and IEEE 260.1. What is not known is written as it is; a mere number (1) has none.
 */
export function writtenUnit(code: string): string {
  if (code === '1') return '';
  const parts = code.match(/\[[^\]]*\]|\{[^}]*\}|[./()]|[^./()[\]{}]+/g) ?? [];
  return parts.map((part, index) => writtenPart(part, parts[index - 1] ?? '')).join('');
}

/** A value with its unit. */
export const withUnit = (value: string, code: string): string =>
  [value, writtenUnit(code)].filter(Boolean).join(' ');

/** A unit in a field to be typed in: that of a mere number must not vanish. */
export const typedUnit = (code: string): string => writtenUnit(code) || code;

const customary: Readonly<Partial<Record<string, string>>> = {
  '.': '·',
  '[degF]': '°F',
  '[ppm]': 'ppm',
  '[in_i]': 'in',
  '[ft_i]': 'ft',
  '[lb_av]': 'lb',
  '[oz_av]': 'oz',
  '[psi]': 'psi',
};

function writtenPart(part: string, before: string): string {
  const known = customary[part];
  if (known !== undefined) return known;
  // Decibels name what they refer to: dB[W], dB[uV].
  if (part.startsWith('[')) return before.endsWith('B') ? writtenUnit(part.slice(1, -1)) : part;
  if (part.startsWith('{')) return ` ${part.slice(1, -1)}`;
  const [, ten, symbol = '', exponent = ''] = /^(10[*^])?(.*?)([+-]?\d+)?$/.exec(part) ?? [];
  if (ten) return `10${raised(exponent)}`;
  if (symbol === '' && !before.startsWith('[')) return part;
  return writtenSymbol(symbol) + raised(exponent);
}

const writtenSymbol = (symbol: string): string =>
  symbol
    .replace(/Ohm$/, 'Ω')
    .replace(/Cel$/, '°C')
    .replace(/^deg$/, '°')
    // By itself u is the unit of atomic mass.
    .replace(/^u(?=.)/, 'µ');

const raised = (exponent: string): string =>
  exponent.replace(/[+-]?\d/g, (sign) =>
    [...sign]
      .map((each) => '⁰¹²³⁴⁵⁶⁷⁸⁹'[Number(each)] ?? { '-': '⁻', '+': '' }[each] ?? each)
      .join(''),
  );
