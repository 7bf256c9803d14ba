import { recordId } from '../../api/kit/globalId.js';
import { isGiven } from '../../api/kit/isGiven.js';
import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import { Refusal } from '../../db/refusal.js';
import { shortText } from '../../db/shortText.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { checkQuantity } from '../stock/checkQuantity.js';
import { checkOrderDays } from './checkOrderDays.js';
import { PartOrderEntity } from './partOrder.entity.js';
import type { ChangePartOrderInput } from './partOrder.inputs.js';

export async function changePartOrder(
  work: UnitOfWork,
  input: ChangePartOrderInput,
): Promise<string> {
  const id = recordId('PartOrder', input.id);
  const before = await work.manager.findOneBy(PartOrderEntity, { id });
  if (!before) throw Refusal.notFound('order', ['id']);
  const check = new Checklist(work);
  const { quantity, orderedFrom, orderedOn, expectedOn, reference, note, arrivedOn } = input;
  if (isGiven(quantity)) checkQuantity(check, quantity, ['quantity']);
  const changes = {
    ...(isGiven(quantity) && { quantity }),
    ...(isGiven(orderedFrom) && { orderedFrom: check.words(orderedFrom, ['orderedFrom']) }),
    ...(isGiven(orderedOn) && { orderedOn }),
    ...(expectedOn !== undefined && { expectedOn }),
    ...(reference !== undefined && { reference: shortText(check, reference, ['reference']) }),
    ...(note !== undefined && { note: check.text(note, ['note']) }),
    ...(arrivedOn !== undefined && { arrivedOn }),
    ...(isGiven(input.isCancelled) && { cancelledAt: input.isCancelled ? work.now : null }),
  };
  checkOrderDays(check, { ...before, ...changes });
  check.done();
  await changeRow(work, PartOrderEntity, id, input.version, changes);
  return id;
}
