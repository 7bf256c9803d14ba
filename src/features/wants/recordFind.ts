import { globalId, optionalRecordId } from '../../api/kit/globalId.js';
import { sentBefore } from '../../api/kit/sentBefore.js';
import { Checklist } from '../../db/checklist.js';
import { insertRow } from '../../db/insertRow.js';
import { Refusal } from '../../db/refusal.js';
import { shortText } from '../../db/shortText.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { LotLineEntity } from '../acquisitions/lotLine.entity.js';
import { recordAcquisition } from '../acquisitions/recordAcquisition.js';
import { checkPastDay } from '../money/checkPastDay.js';
import { PartTypeEntity } from '../parts/partType.entity.js';
import { addStock } from '../stock/addStock.js';
import { checkQuantity } from '../stock/checkQuantity.js';
import { reserveStock } from '../stock/reserveStock.js';
import { TaskEntity } from '../tasks/task.entity.js';
import { FindEntity } from './find.entity.js';
import type { RecordFindInput } from './find.inputs.js';
import { WantEntity } from './want.entity.js';

/** A purchase on the spot: an acquisition, spares on the shelf, put aside for the task that waits. */
export async function recordFind(work: UnitOfWork, input: RecordFindInput): Promise<string> {
  const { known, key, digest } = await sentBefore(work, FindEntity, input);
  if (known) return known.id;
  const check = new Checklist(work);
  const wantId = optionalRecordId('Want', input.wantId ?? null, ['wantId']);
  const want = wantId === null ? null : await work.manager.findOneBy(WantEntity, { id: wantId });
  if (wantId !== null && want === null) throw Refusal.notFound('want', ['wantId']);
  const givenTypeId = optionalRecordId('PartType', input.partTypeId ?? null, ['partTypeId']);
  const partTypeId = givenTypeId ?? want?.partTypeId ?? null;
  const partType =
    partTypeId === null ? null : await work.manager.findOneBy(PartTypeEntity, { id: partTypeId });
  await check.exists('part_type', givenTypeId, ['partTypeId']);
  const description =
    shortText(check, input.description, ['description'], 150) ?? want?.description ?? null;
  const name = partType?.designation ?? description;
  check.that(name !== null, 'Say what was bought: give a want, a part type or a description.', [
    'description',
  ]);
  checkQuantity(check, input.quantity, ['quantity']);
  const foundOn = input.foundOn ?? work.now.slice(0, 10);
  checkPastDay(check, foundOn, work.now, ['foundOn']);
  check.done();

  const { quantity, price, venue, note } = input;
  const acquisitionId = await recordAcquisition(work, {
    acquiredOn: foundOn,
    venue: venue ?? null,
    price,
    extraCosts: [],
    spreadMethod: 'EQUAL_SHARES',
    lines: [{ sundries: `${quantity} × ${name ?? ''}` }],
    claims: [],
    note: note ?? null,
  });
  const line = await work.manager.findOneByOrFail(LotLineEntity, { acquisitionId });
  const stockLotId = await addStock(work, {
    partTypeId: partTypeId === null ? null : globalId('PartType', partTypeId),
    description,
    quantity,
    condition: 'UNKNOWN',
    receivedOn: foundOn,
    lotLineId: globalId('LotLine', line.id),
  });
  await putAside(work, want, stockLotId, quantity);
  return (await insertRow(work, FindEntity, { key, digest, wantId, acquisitionId, stockLotId })).id;
}

/** For the task that waits, no more than it wanted, while it is open. */
async function putAside(
  work: UnitOfWork,
  want: WantEntity | null,
  stockLotId: string,
  quantity: number,
): Promise<void> {
  if (!want?.taskId) return;
  const { status } = await work.manager.findOneByOrFail(TaskEntity, { id: want.taskId });
  if (status === 'DONE' || status === 'DROPPED') return;
  await reserveStock(work, {
    taskId: globalId('Task', want.taskId),
    lotId: globalId('StockLot', stockLotId),
    quantity: Math.min(quantity, want.quantity),
  });
}
