import { delimiterMarks, type ListDelimiter } from './listDelimiter.js';

/**
 * What divides the headings: the mark that stands most often in the first line that is not empty,
 * outside quotation marks. A list of one column has none; a comma is then as good as any.
 */
export function sniffDelimiter(text: string): ListDelimiter {
  const counts = new Map<string, number>();
  let isQuoted = false;
  for (const character of text.trimStart()) {
    if (character === '"') isQuoted = !isQuoted;
    else if (character === '\n' && !isQuoted) break;
    else if (!isQuoted) counts.set(character, (counts.get(character) ?? 0) + 1);
  }
  const words = Object.keys(delimiterMarks) as ListDelimiter[];
  const countOf = (word: ListDelimiter) => counts.get(delimiterMarks[word]) ?? 0;
  return words.reduce((best, word) => (countOf(word) > countOf(best) ? word : best));
}
