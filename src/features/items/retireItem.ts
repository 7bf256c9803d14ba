import { itemTypes, recordId } from '../../api/kit/globalId.js';
import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import { oneAtATime } from '../../db/oneAtATime.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { servicesOf } from '../services/servicesOf.js';
import { ItemEntity } from './item.entity.js';
import type { RetireItemInput } from './item.inputs.js';
import { knownItem } from './knownItem.js';
import { ServiceEntity } from './service.entity.js';

/** It leaves the collection: what it served or was served by ends, and so does its housing. */
export async function retireItem(work: UnitOfWork, input: RetireItemInput): Promise<string> {
  const id = recordId(itemTypes, input.id);
  await oneAtATime(work, 'housing');
  const item = await knownItem(work, id, ['id']);
  const check = new Checklist(work);
  const reason = check.words(input.reason, ['reason'], 1000);
  if (item.retiredAt !== null) check.refuse('It has left the collection already.', ['id']);
  const housed = await work.manager.findBy(ItemEntity, { housedInId: id });
  if (housed.length > 0) {
    const numbers = housed.map(({ inventoryNumber }) => inventoryNumber).sort();
    const message = `It houses ${numbers.join(', ')}. Take that out of the housing first.`;
    check.add({ code: 'CONFLICT', message, path: ['id'] });
  }
  check.done();
  for (const service of await servicesOf(work, id)) {
    await changeRow(work, ServiceEntity, service.id, null, { endedAt: work.now });
  }
  const changes = { retiredAt: work.now, retiredReason: reason, housedInId: null };
  await changeRow(work, ItemEntity, id, input.version, changes);
  return id;
}
