import { recordId } from '../../api/kit/globalId.js';
import { isGiven } from '../../api/kit/isGiven.js';
import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import { Refusal } from '../../db/refusal.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { checkPastDay } from '../money/checkPastDay.js';
import { chooseParty } from '../parties/chooseParty.js';
import { correctedShares } from './correctedShares.js';
import { DisposalEntity, DisposalLineEntity } from './disposal.entity.js';
import type { ChangeDisposalInput } from './disposal.inputs.js';
import { readPrice } from './readPrice.js';

/** Corrects when, how, to whom and for what a lot went. An item that came back is returned by itself. */
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
  const before = await work.manager.findOneBy(DisposalEntity, { id });
  if (!before) throw Refusal.notFound('disposal');
  const price = isGiven(input.price)
    ? readPrice(check, input.price, ['price'])
    : { minorUnits: Number(before.priceMinorUnits), currency: before.currency };
  const shares =
    isGiven(input.price) || isGiven(input.lines)
      ? await correctedShares(work, check, id, price, input.lines ?? null)
      : [];
  const keepParty = await chooseParty(work, check, toParty, ['toParty']);
  check.done();
  await changeRow(work, DisposalEntity, id, input.version, {
    ...changes,
    priceMinorUnits: price.minorUnits,
    currency: price.currency,
    ...(toParty !== undefined && { toPartyId: await keepParty() }),
  });
  for (const { lineId, priceMinorUnits } of shares) {
    await changeRow(work, DisposalLineEntity, lineId, null, { priceMinorUnits });
  }
  return id;
}
