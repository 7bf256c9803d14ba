import { recordId } from '../../api/kit/globalId.js';
import { isGiven } from '../../api/kit/isGiven.js';
import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { checkPastDay } from '../money/checkPastDay.js';
import { chooseParty } from '../parties/chooseParty.js';
import { DisposalEntity } from './disposal.entity.js';
import type { ChangeDisposalInput } from './disposal.inputs.js';

/** Corrects when, how and to whom a lot went. An item that came back is returned by itself. */
export async function changeDisposal(
  work: UnitOfWork,
  input: ChangeDisposalInput,
): Promise<string> {
  const id = recordId('Disposal', input.id);
  const check = new Checklist(work);
  const { kind, disposedOn, toParty, venue, note } = input;
  if (isGiven(disposedOn)) checkPastDay(check, disposedOn, work.now, ['disposedOn']);
  const changes = {
    ...(isGiven(kind) && { kind }),
    ...(isGiven(disposedOn) && { disposedOn }),
    ...(venue !== undefined && { venue: venue === null ? null : check.words(venue, ['venue']) }),
    ...(note !== undefined && { note: check.text(note, ['note']) }),
  };
  const keepParty = await chooseParty(work, check, toParty, ['toParty']);
  check.done();
  await changeRow(work, DisposalEntity, id, input.version, {
    ...changes,
    ...(toParty !== undefined && { toPartyId: await keepParty() }),
  });
  return id;
}
