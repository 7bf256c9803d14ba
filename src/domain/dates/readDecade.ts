import type { DatePhrase } from './dateOffer.js';
import type { LocalDate } from './localDate.js';

const tens: Readonly<Record<string, string>> = {
  twenties: '2',
  thirties: '3',
  forties: '4',
  fifties: '5',
  sixties: '6',
  seventies: '7',
  eighties: '8',
  nineties: '9',
};

const shape =
  /^(?:the )?(?:(?<part>early|mid|middle|late|beginning|start|end|anfang|mitte|ende)(?: of)?(?: der)?[- ]?)?(?:the )?(?:(?<century>1[89]|20)?['’]?(?<ten>\d)0['’]?(?:s|er(?:[- ]jahren?)?)|(?<word>\p{L}+ties))$/u;

/** First and last digit of the years, wider than a third: better too wide than wrong. */
const digitsOf = (part: string): readonly [number, number] => {
  if (/^(?:early|beginning|start|anfang)$/u.test(part)) return [0, 3];
  return /^(?:late|end|ende)$/u.test(part) ? [6, 9] : [3, 7];
};

/** "The 1960s", "late 60s", "early fifties", "Ende der 60er". */
export function readDecade(words: string, notAfter: LocalDate): DatePhrase[] {
  const groups = shape.exec(words)?.groups;
  if (!groups) return [];
  const { part, century, word } = groups;
  const ten = word === undefined ? groups['ten'] : tens[word];
  if (ten === undefined) return [];
  return (century === undefined ? ['19', '20'] : [century])
    .map((start) => `${start}${ten}`)
    .filter((start) => `${start}0` <= notAfter.slice(0, 4))
    .map((start): DatePhrase => {
      if (part === undefined) {
        const [first, last] = [`${start}0`, `${start}9`];
        return { edtf: `${start}X`, readAs: `the ${start}0s`, first, last };
      }
      const [from, to] = digitsOf(part);
      const first = `${start}${from}`;
      const last = `${start}${to}`;
      return {
        edtf: `[${first}..${last}]`,
        readAs: `one of the years ${first} to ${last}`,
        first,
        last,
      };
    });
}
