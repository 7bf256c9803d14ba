import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { htmlOf, htmlWords } from '../../src/features/reports/htmlOf.js';
import { markdownOf, markdownWords } from '../../src/features/reports/markdownOf.js';
import { sheetCell } from '../../src/features/reports/sheetCell.js';

describe('words that somebody else wrote', () => {
  const hostile =
    '<script>alert(1)</script> [click](javascript:alert(1)) ![x](http://x) | `a` # & "q"';

  it('are words in HTML, never tags', () => {
    const page = htmlOf(hostile, [
      { kind: 'HEADING', level: 1, text: hostile },
      { kind: 'TABLE', columns: [{ name: hostile }], rows: [[hostile]] },
      { kind: 'LIST', items: [hostile] },
    ]);
    expect(page).not.toContain('<script');
    expect(page).toContain('&lt;script&gt;alert(1)&lt;/script&gt;');
    fc.assert(
      fc.property(fc.string(), (text) => {
        expect(htmlWords(text)).not.toMatch(/[<>"']/);
      }),
    );
  });

  it('are words in Markdown: no tag, link, picture, heading, new line or new cell', () => {
    expect(markdownWords(hostile)).toContain('\\<script\\>');
    expect(markdownWords('a\n# b')).toBe('a \\# b');
    const row = markdownOf([{ kind: 'TABLE', columns: [{ name: 'a' }], rows: [['x | y\nz']] }]);
    expect(row).toBe('| a |\n| --- |\n| x \\| y z |\n');
    fc.assert(
      fc.property(fc.string(), (text) => {
        expect(markdownWords(text)).not.toMatch(/\n|(^|[^\\])(\\\\)*[<>[\]|`]/);
      }),
    );
  });

  // Source: OWASP, "CSV Injection": cells that begin with = + - @, tab or carriage return.
  it('never begin a cell of a spreadsheet as a formula', () => {
    for (const text of ['=1+1', '+1', '-1', '@SUM(A1)', '\t=1', '\r=1']) {
      expect(sheetCell(text)).toBe(`'${text}`);
    }
    expect(sheetCell('6146B = good')).toBe('6146B = good');
    expect(sheetCell(null)).toBe('');
  });
});
