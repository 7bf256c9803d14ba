import { recordId } from '../../api/kit/globalId.js';
import { isGiven } from '../../api/kit/isGiven.js';
import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import { oneAtATime } from '../../db/oneAtATime.js';
import { Refusal } from '../../db/refusal.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { checkQuantity } from './checkQuantity.js';
import { holdStock } from './holdStock.js';
import type { ChangeStockDrawInput } from './stock.inputs.js';
import { StockDrawEntity } from './stockDraw.entity.js';
import { stockGuard } from './stockGuard.js';

export async function changeStockDraw(
  work: UnitOfWork,
  input: ChangeStockDrawInput,
): Promise<string> {
  await oneAtATime(work, stockGuard);
  const id = recordId('StockDraw', input.id);
  const before = await work.manager.findOneBy(StockDrawEntity, { id });
  if (!before) throw Refusal.notFound('draw');
  const check = new Checklist(work);
  if (isGiven(input.quantity)) {
    checkQuantity(check, input.quantity, ['quantity'], 0);
    check.that(
      before.reason !== 'FITTED' || input.quantity <= 1,
      'One fitting takes one part: give 1, or 0 if it came from elsewhere.',
      ['quantity'],
    );
  }
  const note = input.note === undefined ? before.note : check.text(input.note, ['note']);
  check.done();
  await changeRow(work, StockDrawEntity, id, input.version, {
    note,
    ...(isGiven(input.quantity) && { quantity: input.quantity }),
  });
  await holdStock(work, before.lotId, ['quantity']);
  return id;
}
