import type { ReportBlock, ReportPicture } from './reportBlock.js';

const entities: Record<string, string> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

export const htmlWords = (text: string): string =>
  text.replace(/[&<>"']/g, (character) => entities[character] ?? '');

const style = `body{font:16px/1.5 system-ui,sans-serif;max-width:48rem;margin:2rem auto;padding:0 1rem}
table{border-collapse:collapse;margin:1rem 0}th,td{border-bottom:1px solid #999;padding:.25rem .75rem;text-align:left}
.number{text-align:right;font-variant-numeric:tabular-nums}
.pictures{display:flex;flex-wrap:wrap;gap:1rem;margin:1rem 0}
figure{flex:1 1 18rem;max-width:30rem;margin:0}img{max-width:100%;height:auto;display:block}
figcaption{font-size:.875rem;overflow-wrap:anywhere}`;

/** A report as one HTML page that asks nothing of any other machine and runs no script. */
export const htmlOf = (title: string, blocks: readonly ReportBlock[]): string =>
  `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; img-src data:; style-src 'unsafe-inline'">
<title>${htmlWords(title)}</title>
<style>${style}</style>
</head>
<body>
${blocks.map(written).join('\n')}
</body>
</html>
`;

function written(block: ReportBlock): string {
  switch (block.kind) {
    case 'HEADING':
      return `<h${block.level}>${htmlWords(block.text)}</h${block.level}>`;
    case 'WORDS':
      return `<p>${htmlWords(block.text)}</p>`;
    case 'LIST':
      return `<ul>\n${block.items.map((item) => `<li>${htmlWords(item)}</li>`).join('\n')}\n</ul>`;
    case 'PICTURES':
      return block.rows
        .map((row) => `<div class="pictures">\n${row.map(figure).join('\n')}\n</div>`)
        .join('\n');
    case 'TABLE': {
      const classOf = (column: number) =>
        block.columns[column]?.isNumber === true ? ' class="number"' : '';
      const head = block.columns.map(
        ({ name }, column) => `<th scope="col"${classOf(column)}>${htmlWords(name)}</th>`,
      );
      const rows = block.rows.map(
        (row) =>
          `<tr>${row.map((cell, column) => `<td${classOf(column)}>${htmlWords(cell)}</td>`).join('')}</tr>`,
      );
      return `<table>\n<thead><tr>${head.join('')}</tr></thead>\n<tbody>\n${rows.join('\n')}\n</tbody>\n</table>`;
    }
  }
}

/** The picture is in the page itself, which asks nobody for it. */
function figure({ jpeg, caption }: ReportPicture): string {
  const words = htmlWords(caption);
  const image =
    jpeg === null
      ? ''
      : `<img src="data:image/jpeg;base64,${jpeg.toString('base64')}" alt="${words}">`;
  return `<figure>${image}<figcaption>${words}</figcaption></figure>`;
}
