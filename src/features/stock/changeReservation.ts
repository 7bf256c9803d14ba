import { recordId } from '../../api/kit/globalId.js';
import { isGiven } from '../../api/kit/isGiven.js';
import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import { oneAtATime } from '../../db/oneAtATime.js';
import { Refusal } from '../../db/refusal.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { checkQuantity } from './checkQuantity.js';
import { holdStock } from './holdStock.js';
import type { ChangeReservationInput } from './stock.inputs.js';
import { stockGuard } from './stockGuard.js';
import { StockReservationEntity } from './stockReservation.entity.js';

export async function changeReservation(
  work: UnitOfWork,
  input: ChangeReservationInput,
): Promise<string> {
  await oneAtATime(work, stockGuard);
  const id = recordId('StockReservation', input.id);
  const before = await work.manager.findOneBy(StockReservationEntity, { id });
  if (!before) throw Refusal.notFound('reservation');
  const check = new Checklist(work);
  if (isGiven(input.quantity)) checkQuantity(check, input.quantity, ['quantity']);
  const note = input.note === undefined ? before.note : check.text(input.note, ['note']);
  check.done();
  await changeRow(work, StockReservationEntity, id, input.version, {
    note,
    ...(isGiven(input.quantity) && { quantity: input.quantity }),
    ...(isGiven(input.isReleased) && {
      releasedAt: input.isReleased ? (before.releasedAt ?? work.now) : null,
    }),
  });
  await holdStock(work, before.lotId, ['quantity']);
  return id;
}
