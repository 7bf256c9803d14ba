import { itemTypes, recordId } from '../../api/kit/globalId.js';
import { changeRow } from '../../db/changeRow.js';
import { Refusal } from '../../db/refusal.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { ItemEntity } from './item.entity.js';
import type { ReturnItemInput } from './item.inputs.js';
import { knownItem } from './knownItem.js';

export async function returnItem(work: UnitOfWork, input: ReturnItemInput): Promise<string> {
  const id = recordId(itemTypes, input.id);
  const { retiredAt } = await knownItem(work, id, ['id']);
  if (retiredAt === null) throw Refusal.invalid('It is in the collection already.', ['id']);
  await changeRow(work, ItemEntity, id, input.version, { retiredAt: null, retiredReason: null });
  return id;
}
