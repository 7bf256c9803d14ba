import type { ReportBlock } from './reportBlock.js';

/** What Markdown gives a meaning to anywhere in a line. */
const meaningful = /[\\`*_{}[\]#|<>&~^$@]/g;
/** What makes a list or a heading of a line that begins with it. */
const meaningfulFirst = /^(\d*)([-+=.)])(?=[\s=+-]|$)/;
/** What some readers make a link of by itself. */
const linked = /:(?=\/\/)|(?<=\bwww)\./gi;

/** A text that no reader of Markdown takes for anything but itself: no link, no tag, no heading. */
export const markdownWords = (text: string): string =>
  text
    .replace(/\s+/g, ' ')
    .trim()
    .replace(meaningful, '\\$&')
    .replace(linked, '\\$&')
    .replace(meaningfulFirst, '$1\\$2');

/** A report as Markdown (CommonMark with the pipe tables of GitHub's dialect). */
export const markdownOf = (blocks: readonly ReportBlock[]): string =>
  `${blocks.map(written).join('\n\n')}\n`;

function written(block: ReportBlock): string {
  switch (block.kind) {
    case 'HEADING':
      return `${'#'.repeat(block.level)} ${markdownWords(block.text)}`;
    case 'WORDS':
      return markdownWords(block.text);
    case 'LIST':
      return block.items.map((item) => `- ${markdownWords(item)}`).join('\n');
    case 'PICTURES':
      return block.rows
        .flat()
        .map(({ caption, path }) => `- [${markdownWords(caption)}](${path})`)
        .join('\n');
    case 'TABLE': {
      const line = (cells: readonly string[]) => `| ${cells.join(' | ')} |`;
      return [
        line(block.columns.map(({ name }) => markdownWords(name))),
        line(block.columns.map(({ isNumber }) => (isNumber === true ? '---:' : '---'))),
        ...block.rows.map((row) => line(row.map(markdownWords))),
      ].join('\n');
    }
  }
}
