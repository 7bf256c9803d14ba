import { recordId } from '../../api/kit/globalId.js';
import { isGiven } from '../../api/kit/isGiven.js';
import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { PriceIndexEntity } from './priceIndex.entity.js';
import type { ChangeIndexInput } from './priceIndex.inputs.js';

/** Its points are never changed: a mistaken index is struck out and the right one loaded. */
export async function changeIndex(work: UnitOfWork, input: ChangeIndexInput): Promise<string> {
  const id = recordId('PriceIndex', input.id);
  const { name, source, isStruck } = input;
  const check = new Checklist(work);
  const changes = {
    ...(isGiven(name) && { name: check.words(name, ['name']) }),
    ...(isGiven(source) && { source: check.words(source, ['source']) }),
    ...(isGiven(isStruck) && { struckAt: isStruck ? work.now : null }),
  };
  check.done();
  await changeRow(work, PriceIndexEntity, id, input.version, changes);
  return id;
}
