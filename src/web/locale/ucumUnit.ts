/**
 * The UCUM code of a unit as people type it: kΩ or kOhm, µF or uF, °C or Cel. What is not known goes
 * out as it was typed; the API says what is wrong with it.
 */
export const ucumUnit = (typed: string): string =>
  typed
    .trim()
    // The micro sign and the Greek letter look alike, and so do the ohm sign and its letter.
    .replace(/^dB([\u00b5\u03bcumk]?[VW])$/, 'dB[$1]')
    .replace(/[\u00b5\u03bc]/g, 'u')
    .replace(/[\u2126\u03a9]/g, 'Ohm')
    .replace(/°C/g, 'Cel')
    .replace(/°F/g, '[degF]')
    .replace(/°/g, 'deg')
    .replace(/^ppm$/, '[ppm]')
    .replace(/[·⋅]/g, '.')
    .replace(/⁻/g, '-')
    .replace(/[⁰¹²³⁴⁵⁶⁷⁸⁹]/g, (digit) => String('⁰¹²³⁴⁵⁶⁷⁸⁹'.indexOf(digit)));
