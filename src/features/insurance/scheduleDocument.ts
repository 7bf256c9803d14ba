import { readFile } from 'node:fs/promises';
import type { AttachmentStore } from '../attachments/attachmentStore.js';
import { derivedPicture } from '../attachments/derivedPicture.js';
import {
  inWords,
  orUnknown,
  section,
  type DossierDocument,
  type DossierPicture,
} from '../dossier/dossierDocument.js';
import type { insuranceSchedule, InsuredRow } from './insuranceSchedule.js';

type Schedule = Awaited<ReturnType<typeof insuranceSchedule>>;

/** A schedule to be printed: a table of values, how they came about, and the photographs. */
export async function scheduleDocument(
  { items, total, ratesOnPaper, unvalued, basis, collectionName, part }: Schedule,
  store: AttachmentStore | null,
  statedOn: string,
): Promise<DossierDocument> {
  const sum =
    total.total === null
      ? total.problems.map(({ message }) => message).join(' ')
      : `${total.total.amount} ${total.total.currency}`;
  return {
    title: 'Insurance schedule',
    subtitle: `${collectionName}${part}, as of ${statedOn}: ${counted(items.length, 'item')}.`,
    statedOn,
    sections: [
      section('Values', {
        facts: [
          ['All together', sum],
          ['Without a value', unvalued.length === 0 ? 'none' : unvalued.join(', ')],
        ],
        remarks: [basis.method, ...basis.assumptions, ...ratesOnPaper],
        table: {
          columns: ['Number', 'Item', 'Serial number', 'Value', 'Basis', 'Valued', 'Source'],
          rows: items.map((item) => [
            item.inventoryNumber,
            item.what,
            orUnknown(item.serialNumber),
            item.value === null ? 'none noted' : `${item.value.amount} ${item.value.currency}`,
            item.valueBasis === null ? '' : inWords(`${item.valueBasis}, ${item.standard ?? ''}`),
            item.valuedOn ?? '',
            item.source ?? '',
          ]),
          rightAligned: ['Value'],
        },
      }),
      section('Photographs', { pictures: await picturesOf(items, store), picturesAcross: 3 }),
    ],
  };
}

const counted = (count: number, what: string): string =>
  `${count} ${what}${count === 1 ? '' : 's'}`;

async function picturesOf(items: readonly InsuredRow[], store: AttachmentStore | null) {
  const pictures: DossierPicture[] = [];
  if (store === null) return pictures;
  for (const { coverDigest, inventoryNumber, what, serialNumber } of items) {
    // A picture whose file is missing is told of by `verify`; the schedule goes without it.
    if (coverDigest === null || !(await store.has(coverDigest))) continue;
    const path = await derivedPicture(store, coverDigest, 'MEDIUM', { format: 'jpeg' });
    const serial = serialNumber === null ? '' : `, serial number ${serialNumber}`;
    pictures.push({ jpeg: await readFile(path), caption: `${inventoryNumber}: ${what}${serial}` });
  }
  return pictures;
}
