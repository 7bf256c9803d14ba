const NAMES: readonly (readonly string[])[] = [
  ['january', 'jan', 'januar', 'jänner', 'jän'],
  ['february', 'feb', 'febr', 'februar', 'feber'],
  ['march', 'mar', 'märz', 'maerz', 'mär', 'mrz'],
  ['april', 'apr'],
  ['may', 'mai'],
  ['june', 'jun', 'juni'],
  ['july', 'jul', 'juli'],
  ['august', 'aug'],
  ['september', 'sep', 'sept'],
  ['october', 'oct', 'oktober', 'okt'],
  ['november', 'nov'],
  ['december', 'dec', 'dezember', 'dez'],
];

const MONTHS = new Map(NAMES.flatMap((names, index) => names.map((name) => [name, index + 1])));

/** The month, 1 to 12, of an English or German name or its usual short form; null for other words. */
export function monthByName(name: string): number | null {
  return MONTHS.get(name.normalize('NFC').toLowerCase()) ?? null;
}
