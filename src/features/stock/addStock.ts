import { checkedRecordId } from '../../api/kit/checkedRecordId.js';
import { Checklist } from '../../db/checklist.js';
import { insertRow } from '../../db/insertRow.js';
import { shortText } from '../../db/shortText.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { checkPastDay } from '../money/checkPastDay.js';
import { readSpent } from '../money/readSpent.js';
import { checkPlace } from '../places/checkPlace.js';
import { checkQuantity } from './checkQuantity.js';
import type { AddStockInput } from './stock.inputs.js';
import { StockLotEntity } from './stockLot.entity.js';
import { whatItCost } from './whatItCost.js';

export async function addStock(work: UnitOfWork, input: AddStockInput): Promise<string> {
  const check = new Checklist(work);
  const partTypeId = checkedRecordId(check, 'PartType', input.partTypeId, ['partTypeId']);
  const lotLineId = checkedRecordId(check, 'LotLine', input.lotLineId, ['lotLineId']);
  const placeId = checkedRecordId(check, 'Place', input.placeId, ['placeId']);
  await check.exists('part_type', partTypeId, ['partTypeId']);
  await check.exists('lot_line', lotLineId, ['lotLineId']);
  await checkPlace(work, check, placeId);
  const description = shortText(check, input.description, ['description']);
  check.that(
    typeof input.partTypeId === 'string' || description !== null,
    'Say what they are: give their part type or a description.',
    ['description'],
  );
  checkQuantity(check, input.quantity, ['quantity']);
  const receivedOn = input.receivedOn ?? work.now.slice(0, 10);
  checkPastDay(check, receivedOn, work.now, ['receivedOn']);
  check.that(
    lotLineId === null || !input.cost,
    'What they cost follows from the line of the acquisition: leave `cost` out.',
    ['cost'],
  );
  const cost = input.cost ? readSpent(check, input.cost, ['cost'], whatItCost) : null;
  const note = check.text(input.note, ['note']);
  check.done();
  const lot = await insertRow(work, StockLotEntity, {
    partTypeId,
    description,
    componentId: null,
    placeId,
    condition: input.condition,
    quantity: input.quantity,
    receivedOn,
    lotLineId,
    costMinorUnits: cost?.minorUnits ?? null,
    currency: cost?.currency ?? null,
    note,
  });
  return lot.id;
}
