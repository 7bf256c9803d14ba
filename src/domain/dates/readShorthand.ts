import type { DateOffer, DatePhrase } from './dateOffer.js';
import { readDatePhrase } from './readDatePhrase.js';
import type { LocalDate } from './localDate.js';
import { nextDate } from './nextDate.js';

const longestText = 60;

const about =
  /^(?:about|around|circa|ca\.?|c\.|approximately|approx\.?|roughly|um|etwa|ungefähr|~)\s*/u;
const perhaps = /^(?:perhaps|probably|possibly|maybe|presumably|wohl|vermutlich|vielleicht)\s+/u;
const before = /^(?:before|prior to|earlier than|vor)\s+/u;
const after = /^(?:after|later than|nach)\s+/u;
const since = /^(?:since|from|seit|ab)\s+|\s+(?:or later|onwards?|and later|oder später)$/gu;
const until =
  /^(?:by|until|till|up to|no later than|not later than|bis)\s+|\s+(?:or earlier|oder früher)$/gu;
const between = /^(?:between|zwischen)\s+(.+?)\s+(?:and|und)\s+(.+)$/u;
const span = /^(?:from\s+|von\s+)?(.+?)\s*(?:–|\s-\s|\bto\b|\bbis\b)\s*(.+)$/u;
const shortSpan = /^(\d{2})(\d{2})[-–/](\d{2})$/u;
const yearSpan = /^(\d{4})[-–](\d{4})$/u;

/**
 * Reads a date in the words that people use: "about 1962", "late 60s", "before 1975", "spring
 * 1971", "between 1955 and 1958". What may be meant in two ways is offered in both; an empty list
 * says that it cannot be read. Nothing is taken over without a person: the result is an offer.
 * (How wide "early" or "late" is taken is common practice, no source; it is said in `readAs`.)
 * @param notAfter the last day that may be meant, usually today
 */
export function readShorthand(text: string, notAfter: LocalDate): DateOffer[] {
  const words = text.normalize('NFC').trim().toLowerCase().replace(/\s+/gu, ' ');
  if (words === '' || words.length > longestText) return [];
  const offers = readWords(words, notAfter);
  return [...new Map(offers.map(({ edtf, readAs }) => [edtf, { edtf, readAs }])).values()];
}

function readWords(words: string, notAfter: LocalDate): DateOffer[] {
  const phrases = (part: string): DatePhrase[] => readDatePhrase(part, notAfter);
  const [, century = '', from = '', to = ''] = shortSpan.exec(words) ?? [];
  if (century !== '' && Number(to) > Number(from)) {
    return spans(phrases(`${century}${from}`), phrases(`${century}${to}`));
  }
  const [, firstYear = '', lastYear = ''] = yearSpan.exec(words) ?? [];
  if (firstYear !== '') return spans(phrases(firstYear), phrases(lastYear));
  const [, low = '', high = ''] = between.exec(words) ?? [];
  if (low !== '') return spans(phrases(low), phrases(high)).slice(0, 1);
  if (before.test(words)) return phrases(words.replace(before, '')).flatMap(earlier);
  if (after.test(words)) return phrases(words.replace(after, '')).flatMap(later);
  const [, start = '', end = ''] = span.exec(words) ?? [];
  if (start !== '') {
    const found = spans(phrases(start), phrases(end));
    if (found.length > 0) return found;
  }
  const onwards = words.replace(since, '');
  if (onwards !== words) return phrases(onwards).flatMap(notBefore);
  const upTo = words.replace(until, '');
  if (upTo !== words) return phrases(upTo).flatMap(notLater);
  return marked(words, notAfter);
}

/** "about", "perhaps" and a question mark, in any order before or after the date. */
function marked(words: string, notAfter: LocalDate): DateOffer[] {
  const plain = words.replace(/\s*\(?\?\)?$/u, '').replace(perhaps, '');
  const isUncertain = plain !== words;
  const bare = plain.replace(about, '');
  const isAbout = bare !== plain;
  const mark = isAbout && isUncertain ? '%' : isAbout ? '~' : isUncertain ? '?' : '';
  const said = { '%': 'perhaps about ', '~': 'about ', '?': 'perhaps ', '': '' }[mark];
  return readDatePhrase(bare, notAfter).flatMap(({ edtf, readAs }) => {
    if (mark === '') return { edtf, readAs };
    if (edtf.startsWith('[')) return { edtf, readAs: `${readAs}, which is about as it is` };
    return { edtf: `${edtf}${mark}`, readAs: `${said}${readAs}` };
  });
}

const earlier = ({ first, readAs }: DatePhrase): DateOffer[] =>
  first === null
    ? []
    : [{ edtf: `[..${nextDate(first, -1)}]`, readAs: `some time before ${readAs}` }];

const later = ({ last, readAs }: DatePhrase): DateOffer[] =>
  last === null ? [] : [{ edtf: `[${nextDate(last, 1)}..]`, readAs: `some time after ${readAs}` }];

const notBefore = ({ first, readAs }: DatePhrase): DateOffer[] =>
  first === null
    ? []
    : [
        { edtf: `[${first}..]`, readAs: `once, in ${readAs} or later` },
        { edtf: `${first}/..`, readAs: `all the time from ${readAs} on` },
      ];

const notLater = ({ last, readAs }: DatePhrase): DateOffer[] =>
  last === null ? [] : [{ edtf: `[..${last}]`, readAs: `once, in ${readAs} or earlier` }];

/** Once in between, or all the time in between: only a person knows which is meant. */
function spans(from: readonly DatePhrase[], to: readonly DatePhrase[]): DateOffer[] {
  return from.flatMap((start) =>
    to.flatMap((end): DateOffer[] => {
      if (start.first === null || end.last === null || start.first > end.last) return [];
      const words = `${start.readAs} to ${end.readAs}`;
      return [
        { edtf: `[${start.first}..${end.last}]`, readAs: `once, in ${words}` },
        { edtf: `${start.first}/${end.last}`, readAs: `all the time, ${words}` },
      ];
    }),
  );
}
