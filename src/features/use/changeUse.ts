import { recordId } from '../../api/kit/globalId.js';
import { pastInstant } from '../../api/kit/pastInstant.js';
import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import { Refusal } from '../../db/refusal.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { OnAirUseEntity } from './onAirUse.entity.js';
import { refuseEndToCome } from './recordUse.js';
import type { ChangeUseInput } from './use.inputs.js';
import { useMinutes } from './useMinutes.js';

/** Corrects a use; the accessories that served then follow in start and length. */
export async function changeUse(work: UnitOfWork, input: ChangeUseInput): Promise<string> {
  const id = recordId('OnAirUse', input.id);
  const use = await work.manager.findOneBy(OnAirUseEntity, { id });
  if (!use) throw Refusal.notFound('use');
  if (use.rigUseId !== null) {
    throw Refusal.invalid('This is the use of an accessory: correct that of the rig it served.');
  }
  const check = new Checklist(work);
  const startedAt = input.startedAt
    ? pastInstant(check, work, input.startedAt, ['startedAt'])
    : use.startedAt;
  const minutes =
    typeof input.hours === 'number' ? useMinutes(check, input.hours, true) : use.minutes;
  refuseEndToCome(check, work, startedAt, minutes);
  const { contacts } = input;
  check.that((contacts ?? 0) >= 0, 'Contacts are counted from 0 up.', ['contacts']);
  const note = input.note === undefined ? undefined : check.text(input.note, ['note']);
  check.done();
  await changeRow(work, OnAirUseEntity, id, input.version, {
    startedAt,
    minutes,
    ...(typeof contacts === 'number' && { contacts }),
    ...(note !== undefined && { note }),
  });
  for (const served of await work.manager.findBy(OnAirUseEntity, { rigUseId: id })) {
    await changeRow(work, OnAirUseEntity, served.id, null, { startedAt, minutes });
  }
  return id;
}
