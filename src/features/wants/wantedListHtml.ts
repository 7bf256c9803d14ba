import { moneyAmount } from '../money/moneyAmount.js';
import { orderInWords } from '../orders/orderInWords.js';
import type { StandingWant } from './openWants.reads.js';

const urgencyWords = {
  STOPS_WORK: 'work waits',
  STOPS_A_SET: 'set incomplete',
  NOTHING_WAITS: 'when found',
} as const;

const style =
  '@page{size:A4;margin:12mm}body{font:10pt/1.25 sans-serif;margin:0}h1{font-size:13pt;margin:0 0 2mm}' +
  'table{border-collapse:collapse;width:100%}th,td{border-bottom:.2mm solid #888;padding:1mm 2mm 1mm 0;' +
  'text-align:left;vertical-align:top}td.figure,th.figure{text-align:right;white-space:nowrap}' +
  'tr{break-inside:avoid}thead{display:table-header-group}';

export interface WantedLine {
  want: StandingWant;
  /** What will do instead, each in words. */
  instead: readonly string[];
  /** Medians of the prices noted, a currency each, with the number of notes. */
  usual: readonly string[];
}

/** The wanted list as one page of HTML, complete in itself: it can be printed, and kept offline. */
export function wantedListHtml(lines: readonly WantedLine[], asOf: string): string {
  const rows = lines.map(({ want, instead, usual }) => {
    const { partTypeName, description, inventoryNumber, designator, note } = want;
    const cells = [
      [partTypeName, description].filter(Boolean).join(', '),
      [inventoryNumber, designator].filter(Boolean).join(' '),
      `${urgencyWords[want.urgency]}${want.openTasksWaiting > 0 ? ` (${want.openTasksWaiting})` : ''}`,
      instead.join(', '),
      want.orders.map(orderInWords).join('; '),
      note ?? '',
    ];
    const figures = [String(want.openQuantity), ceilingOf(want), usual.join(', ')];
    return `<tr>${cells.map((cell) => `<td>${escaped(cell)}</td>`).join('')}${figures
      .map((figure) => `<td class="figure">${escaped(figure)}</td>`)
      .join('')}</tr>`;
  });
  const heads = ['What', 'For', 'How badly', 'Will do instead', 'On order', 'Remarks']
    .map((head) => `<th scope="col">${head}</th>`)
    .join('');
  return (
    `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>Wanted</title>` +
    `<meta name="viewport" content="width=device-width"><style>${style}</style></head><body>` +
    `<h1>Wanted, as of ${escaped(asOf.slice(0, 10))}</h1><table><thead><tr>${heads}` +
    `<th scope="col" class="figure">Pieces</th><th scope="col" class="figure">Up to, for one</th>` +
    `<th scope="col" class="figure">Usual price (notes)</th></tr></thead><tbody>${rows.join('')}</tbody></table></body></html>`
  );
}

function ceilingOf({ ceilingMinorUnits, ceilingCurrency }: StandingWant): string {
  if (ceilingMinorUnits === null || ceilingCurrency === null) return '';
  const { amount, currency } = moneyAmount(Number(ceilingMinorUnits), ceilingCurrency);
  return `${amount} ${currency}`;
}

const escaped = (text: string): string =>
  text
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');
