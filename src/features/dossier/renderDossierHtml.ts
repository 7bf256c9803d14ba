import type { DossierDocument, DossierSection, DossierTable } from './dossierDocument.js';

const style = `body{font:16px/1.5 system-ui,sans-serif;max-width:60rem;margin:2rem auto;padding:0 1rem;color:#1c1c1c;background:#fff}
h1{font-size:1.6rem;margin-bottom:0}h2{font-size:1.2rem;border-bottom:1px solid #767676;margin-top:2rem}
table{border-collapse:collapse;width:100%}th,td{text-align:left;vertical-align:top;border-bottom:1px solid #ccc;padding:.25rem .5rem;overflow-wrap:anywhere}th{overflow-wrap:normal}section{overflow-x:auto}
dl{display:grid;grid-template-columns:14rem 1fr;gap:.25rem 1rem}dt{font-weight:600}dd{margin:0;overflow-wrap:anywhere}
figure{margin:0 0 1rem}img{max-width:100%;height:auto}
@page{margin:14mm}@media print{body{font-size:10pt;line-height:1.35;max-width:none;margin:0;padding:0}section{overflow:visible}h2{margin-top:1.2rem;break-after:avoid}tr,figure,dt,dd{break-inside:avoid}thead{display:table-header-group}img{max-height:9cm}}`;

/** A dossier as one page that needs nothing from elsewhere and runs nothing. */
export const renderDossierHtml = ({ title, subtitle, sections }: DossierDocument): string =>
  `<!doctype html>
<html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width">
<title>${escaped(title)}</title><style>${style}</style></head>
<body><main><h1>${escaped(title)}</h1><p>${escaped(subtitle)}</p>
${sections.map(sectionText).join('\n')}
</main></body></html>
`;

function sectionText({ heading, remarks, facts, table, pictures }: DossierSection): string {
  const parts = [`<h2>${escaped(heading)}</h2>`];
  for (const remark of remarks) parts.push(`<p>${escaped(remark)}</p>`);
  if (facts.length > 0) {
    const pairs = facts.map(
      ([name, value]) => `<dt>${escaped(name)}</dt><dd>${escaped(value)}</dd>`,
    );
    parts.push(`<dl>${pairs.join('')}</dl>`);
  }
  if (table) parts.push(tableText(table));
  for (const { jpeg, caption } of pictures) {
    const text = escaped(caption);
    const source = `data:image/jpeg;base64,${jpeg.toString('base64')}`;
    parts.push(
      `<figure><img alt="${text}" src="${source}"><figcaption>${text}</figcaption></figure>`,
    );
  }
  return `<section>${parts.join('\n')}</section>`;
}

const tableText = ({ columns, rows }: DossierTable): string =>
  `<table><thead><tr>${columns.map((name) => `<th scope="col">${escaped(name)}</th>`).join('')}</tr></thead>
<tbody>${rows.map((row) => `<tr>${row.map((cell) => `<td>${escaped(cell)}</td>`).join('')}</tr>`).join('\n')}</tbody></table>`;

const entities: Record<string, string> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

const escaped = (text: string): string => text.replace(/[&<>"']/g, (mark) => entities[mark] ?? '');
