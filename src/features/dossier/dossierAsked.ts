import { argumentProblem } from '../../api/kit/argumentProblem.js';
import type { DossierChoice } from './dossierDocument.js';
import {
  DossierExtent,
  DossierPaper,
  DossierReader,
  DossierWithheld,
  usuallyWithheld,
} from './dossierReader.js';
import type { DossierFormat } from './dossierReader.js';
import type { DossierForm } from './writeDossier.js';

export interface DossierAsked {
  choice: DossierChoice;
  form: DossierForm;
}

/** The parts of an address after the question mark: absent, once, or several times. */
type Query = Readonly<Record<string, unknown>>;

/**
 * What an address asks for: `reader`, `extent`, `paper`, `statedOn`, and `withhold` as words with
 * commas between them, or `nothing`.
 * @throws GraphQLError that says what to mend
 */
export function dossierAsked(query: Query, format: DossierFormat, today: string): DossierAsked {
  const reader = oneOf(query, 'reader', DossierReader, 'BUYER');
  return {
    choice: {
      reader,
      extent: oneOf(query, 'extent', DossierExtent, 'DOSSIER'),
      withheld: new Set(withheldIn(textOf(query, 'withhold'), reader)),
      statedOn: dayIn(textOf(query, 'statedOn'), today),
    },
    form: { format, paper: oneOf(query, 'paper', DossierPaper, 'A4') },
  };
}

/** The address of what was asked: the same bytes as long as the records are the same. */
export function dossierPath(inventoryNumber: string, { choice, form }: DossierAsked): string {
  const { reader, extent, withheld, statedOn } = choice;
  const query = new URLSearchParams({
    item: inventoryNumber,
    reader,
    extent,
    withhold: withheld.size === 0 ? 'nothing' : [...withheld].sort().join(','),
    paper: form.paper,
    statedOn,
  });
  return `/download/dossier.${form.format.toLowerCase()}?${query.toString()}`;
}

export const isDay = (text: string): boolean =>
  /^\d{4}-\d\d-\d\d$/.test(text) && !Number.isNaN(Date.parse(`${text}T00:00:00Z`));

function dayIn(text: string | null, today: string): string {
  if (text === null) return today;
  if (!isDay(text)) throw argumentProblem('statedOn is a day, YYYY-MM-DD.');
  return text;
}

function withheldIn(text: string | null, reader: DossierReader): readonly DossierWithheld[] {
  if (text === null) return usuallyWithheld[reader];
  if (text.toLowerCase() === 'nothing') return [];
  return text.split(',').map((word) => wordOf('withhold', DossierWithheld, word));
}

function oneOf<Word extends string>(
  query: Query,
  name: string,
  words: Readonly<Record<Word, Word>>,
  otherwise: Word,
): Word {
  const text = textOf(query, name);
  return text === null ? otherwise : wordOf(name, words, text);
}

function wordOf<Word extends string>(
  name: string,
  words: Readonly<Record<Word, Word>>,
  text: string,
): Word {
  const word = text.trim().toUpperCase();
  if (Object.hasOwn(words, word)) return word as Word;
  throw argumentProblem(
    `${name} is one of ${Object.keys(words).join(', ').toLowerCase()}, not “${text.slice(0, 40)}”.`,
  );
}

function textOf(query: Query, name: string): string | null {
  const value = query[name];
  if (value === undefined) return null;
  if (typeof value === 'string') return value;
  throw argumentProblem(`Give ${name} once.`);
}
