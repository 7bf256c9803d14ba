import { insertRow } from '../../db/insertRow.js';
import { oneAtATime } from '../../db/oneAtATime.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { ComponentEntity } from '../parts/component.entity.js';
import { readLotLevels } from './lotLevels.reads.js';
import { stockGuard } from './stockGuard.js';
import { StockLotEntity } from './stockLot.entity.js';

/** A component that came out of a set lies on the shelf: a lot of one, with its own readings. */
export async function shelveComponent(
  work: UnitOfWork,
  componentId: string,
  removedAt: string,
): Promise<void> {
  await oneAtATime(work, stockGuard);
  const lots = await readLotLevels(work, 'stock_lot.component_id = ?', [componentId]);
  if (lots.some((lot) => lot.quantity > lot.drawn)) return;
  const component = await work.manager.findOneByOrFail(ComponentEntity, { id: componentId });
  await insertRow(work, StockLotEntity, {
    partTypeId: component.partTypeId,
    description: component.marking,
    componentId,
    placeId: null,
    condition: 'USED_UNTESTED',
    quantity: 1,
    receivedOn: removedAt.slice(0, 10),
    lotLineId: null,
    costMinorUnits: null,
    currency: null,
    note: null,
  });
}
