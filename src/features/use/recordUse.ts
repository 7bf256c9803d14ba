import { checkedRecordId } from '../../api/kit/checkedRecordId.js';
import { recordId } from '../../api/kit/globalId.js';
import { pastInstant } from '../../api/kit/pastInstant.js';
import { Checklist } from '../../db/checklist.js';
import { insertRow } from '../../db/insertRow.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { OnAirUseEntity } from './onAirUse.entity.js';
import type { RecordUseInput } from './use.inputs.js';
import { useMinutes } from './useMinutes.js';

const MINUTE_MS = 60_000;

/** The rig's use, and one of each accessory that served it: a figure of its own for each. */
export async function recordUse(work: UnitOfWork, input: RecordUseInput): Promise<string> {
  const rigId = recordId('Rig', input.rigId, ['rigId']);
  const check = new Checklist(work);
  await check.exists('item', rigId, ['rigId']);
  const minutes = useMinutes(check, input.hours);
  const began = input.startedAt ?? new Date(Date.parse(work.now) - minutes * MINUTE_MS);
  const startedAt = pastInstant(check, work, began, ['startedAt']);
  refuseEndToCome(check, work, startedAt, minutes);
  const { contacts } = input;
  check.that(contacts >= 0, 'Contacts are counted from 0 up.', ['contacts']);
  const band =
    input.band === undefined || input.band === null ? null : check.words(input.band, ['band'], 10);
  const mode =
    input.mode === undefined || input.mode === null ? null : check.words(input.mode, ['mode'], 20);
  check.that(
    band === null || /^\d{1,4}(\.\d{1,2})?(m|cm|mm)$/.test(band),
    'Write the band as its wavelength: 40m, 70cm.',
    ['band'],
  );
  const operatorId = checkedRecordId(check, 'Party', input.operatorId, ['operatorId']);
  await check.exists('party', operatorId, ['operatorId']);
  const accessoryIds: string[] = [];
  for (const [index, text] of input.accessoryIds.entries()) {
    const path = ['accessoryIds', String(index)];
    const id = checkedRecordId(check, 'Accessory', text, path);
    await check.exists('item', id, path);
    if (id !== null && accessoryIds.includes(id)) check.refuse('It is named twice.', path);
    if (id !== null) accessoryIds.push(id);
  }
  const note = check.text(input.note, ['note']);
  check.done();
  const shared = { startedAt, minutes, band, mode, operatorId, contactKeys: null };
  const { id } = await insertRow(work, OnAirUseEntity, {
    ...shared,
    itemId: rigId,
    rigUseId: null,
    contacts,
    note,
  });
  for (const itemId of accessoryIds) {
    const served = { ...shared, itemId, rigUseId: id, contacts: 0, note: null };
    await insertRow(work, OnAirUseEntity, served);
  }
  return id;
}

/** Use that has not ended yet is not recorded as done. */
export function refuseEndToCome(
  check: Checklist,
  work: UnitOfWork,
  startedAt: string,
  minutes: number,
): void {
  check.that(
    Date.parse(startedAt) + minutes * MINUTE_MS <= Date.parse(work.now) + MINUTE_MS,
    'It would end in the future. Give the hours up to now, or an earlier start.',
    ['hours'],
  );
}
