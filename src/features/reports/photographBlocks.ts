import { readFile } from 'node:fs/promises';
import { DateTime } from 'luxon';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { AttachmentStore } from '../attachments/attachmentStore.js';
import { derivedPicture } from '../attachments/derivedPicture.js';
import { inWords } from '../dossier/dossierDocument.js';
import { dossierItem } from '../dossier/dossierItem.js';
import type { Hiding } from '../dossier/hidingOf.js';
import { withheldTexts } from '../dossier/withheldTexts.js';
import { readPhotographs, type ReportedPhotograph } from './photographs.reads.js';
import type { ReportBlock, ReportPicture } from './reportBlock.js';
import type { ReportPeriod } from './reportPeriod.js';

/** Each is some tens of kilobytes in the page, which is to be sent by post. */
const mostRows = 24;
const withheld = new Set(['PEOPLE', 'PLACES', 'PRICES', 'SERIAL_NUMBERS'] as const);

/** The photographs of a report, one from before beside the one from after. */
export async function photographBlocks(
  context: ApiContext,
  period: ReportPeriod,
  itemId: string | null,
): Promise<ReportBlock[]> {
  const photographs = await readPhotographs(context, period, itemId);
  if (photographs.length === 0) {
    return [{ kind: 'WORDS', text: 'No photograph was taken or attached.' }];
  }
  const pairs = inPairs(photographs);
  const shown = pairs.slice(0, mostRows);
  const hidings = await hidingsOf(context, shown.flat());
  const rows: ReportPicture[][] = [];
  for (const pair of shown) {
    const row: ReportPicture[] = [];
    for (const photograph of pair) {
      const hide = hidings.get(photograph.itemId) ?? ((text: string) => text);
      row.push(await pictureOf(context, photograph, captionOf(photograph, period.zone, hide)));
    }
    rows.push(row);
  }
  const unread = rows.flat().filter(({ jpeg }) => jpeg === null).length;
  const remarks = [
    pairs.length > mostRows ? `The first ${mostRows} of ${pairs.length}.` : '',
    unread > 0 ? `${unread} cannot be read from where they are kept.` : '',
  ].filter(Boolean);
  return [...remarks.map((text) => ({ kind: 'WORDS' as const, text })), { kind: 'PICTURES', rows }];
}

/** One that belongs beside another stands there and not by itself. */
function inPairs(photographs: readonly ReportedPhotograph[]): ReportedPhotograph[][] {
  const byId = new Map(photographs.map((photograph) => [photograph.id, photograph]));
  const besides = new Set(photographs.map(({ beforeId }) => beforeId));
  return photographs
    .filter(({ id }) => !besides.has(id))
    .map((photograph) => {
      const before = photograph.beforeId === null ? undefined : byId.get(photograph.beforeId);
      return before === undefined ? [photograph] : [before, photograph];
    });
}

async function hidingsOf(
  { database: { reader } }: ApiContext,
  photographs: readonly ReportedPhotograph[],
): Promise<Map<string, Hiding>> {
  const hidings = new Map<string, Hiding>();
  for (const itemId of new Set(photographs.map((photograph) => photograph.itemId))) {
    const item = await dossierItem(reader, itemId);
    if (item) hidings.set(itemId, await withheldTexts(reader, item, { withheld }));
  }
  return hidings;
}

async function pictureOf(
  { attachmentsFolder }: ApiContext,
  { digest }: ReportedPhotograph,
  caption: string,
): Promise<ReportPicture> {
  const path = `/attachments/${digest}/picture?size=medium`;
  if (attachmentsFolder === null) return { jpeg: null, caption, path };
  const store = new AttachmentStore(attachmentsFolder);
  // A picture whose file is missing is told of by `verify`; the report goes without it.
  const jpeg = await derivedPicture(store, digest, 'MEDIUM', { format: 'jpeg' })
    .then((file) => readFile(file))
    .catch(() => null);
  return { jpeg, caption, path };
}

const shownRoles: Record<string, string> = { BEFORE: 'Before: ', AFTER: 'After: ' };

function captionOf(
  { inventoryNumber, task, role, caption, takenAt, recordedAt }: ReportedPhotograph,
  zone: string,
  hide: Hiding,
): string {
  const day =
    takenAt?.slice(0, 10) ?? DateTime.fromISO(recordedAt, { zone }).toFormat('yyyy-MM-dd');
  const of = task === null ? inventoryNumber : `${inventoryNumber}, ${task}`;
  const shown = caption === null ? inWords(role) : `${shownRoles[role] ?? ''}${hide(caption)}`;
  return `${of}. ${shown} (${day})`;
}
