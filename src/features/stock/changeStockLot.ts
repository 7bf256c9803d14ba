import { optionalRecordId, recordId } from '../../api/kit/globalId.js';
import { isGiven } from '../../api/kit/isGiven.js';
import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import { oneAtATime } from '../../db/oneAtATime.js';
import { Refusal } from '../../db/refusal.js';
import { shortText } from '../../db/shortText.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { checkPastDay } from '../money/checkPastDay.js';
import { readSpent } from '../money/readSpent.js';
import { checkPlace } from '../places/checkPlace.js';
import { checkQuantity } from './checkQuantity.js';
import { holdStock } from './holdStock.js';
import type { ChangeStockLotInput } from './stock.inputs.js';
import { stockGuard } from './stockGuard.js';
import { StockLotEntity } from './stockLot.entity.js';
import { whatItCost } from './whatItCost.js';

export async function changeStockLot(
  work: UnitOfWork,
  input: ChangeStockLotInput,
): Promise<string> {
  await oneAtATime(work, stockGuard);
  const id = recordId('StockLot', input.id);
  const before = await work.manager.findOneBy(StockLotEntity, { id });
  if (!before) throw Refusal.notFound('stock lot');
  const check = new Checklist(work);
  const partTypeId = optionalRecordId('PartType', input.partTypeId, ['partTypeId']);
  await check.exists('part_type', partTypeId ?? null, ['partTypeId']);
  const placeId = optionalRecordId('Place', input.placeId, ['placeId']);
  await checkPlace(work, check, placeId ?? null);
  const description =
    input.description === undefined
      ? before.description
      : shortText(check, input.description, ['description']);
  const kept = partTypeId === undefined ? before.partTypeId : partTypeId;
  check.that(
    kept !== null || description !== null || before.componentId !== null,
    'Say what they are: leave their part type or a description.',
    ['description'],
  );
  if (isGiven(input.quantity)) {
    checkQuantity(check, input.quantity, ['quantity'], 0);
    check.that(
      before.componentId === null || input.quantity <= 1,
      'This lot is one known component.',
      ['quantity'],
    );
  }
  if (isGiven(input.receivedOn)) checkPastDay(check, input.receivedOn, work.now, ['receivedOn']);
  check.that(
    !input.cost || before.lotLineId === null,
    'What they cost follows from the line of the acquisition: change it there.',
    ['cost'],
  );
  const cost = input.cost ? readSpent(check, input.cost, ['cost'], whatItCost) : null;
  const note = input.note === undefined ? before.note : check.text(input.note, ['note']);
  check.done();
  await changeRow(work, StockLotEntity, id, input.version, {
    partTypeId: kept,
    description,
    note,
    ...(placeId !== undefined && { placeId }),
    ...(isGiven(input.condition) && { condition: input.condition }),
    ...(isGiven(input.quantity) && { quantity: input.quantity }),
    ...(isGiven(input.receivedOn) && { receivedOn: input.receivedOn }),
    ...(input.cost !== undefined && {
      costMinorUnits: cost?.minorUnits ?? null,
      currency: cost?.currency ?? null,
    }),
  });
  await holdStock(work, id, ['quantity']);
  return id;
}
