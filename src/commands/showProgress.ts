import type { Surroundings } from './surroundings.js';

const barLength = 30;
const count = new Intl.NumberFormat('en');

/**
 * Shows how far something is: a bar on a terminal, else a line now and then.
 * @param noun what is counted, as a plural
 * @param rowsBetweenLines how many of them there are from one line to the next
 */
export function showProgress(
  { repaint, say }: Surroundings,
  noun = 'rows',
  rowsBetweenLines = 10_000,
) {
  let nextLine = rowsBetweenLines;
  let lastWord = '';
  return {
    at(word: string, rows: number, share: number | null): void {
      if (word !== lastWord) nextLine = rowsBetweenLines;
      lastWord = word;
      const percent = share === null ? '' : `${Math.floor(share * 100)} %, `;
      const text = `${word} … ${percent}${count.format(rows)} ${noun}`;
      if (repaint) {
        const filled = Math.round((share ?? 0) * barLength);
        const bar = '#'.repeat(filled).padEnd(barLength, '.');
        repaint(share === null ? text : `[${bar}] ${text}`);
      } else if (rows >= nextLine) {
        say(text);
        nextLine = rows + rowsBetweenLines;
      }
    },
    end(): void {
      repaint?.('');
    },
  };
}
