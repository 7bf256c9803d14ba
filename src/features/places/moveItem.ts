import { itemTypes, optionalRecordId, recordId } from '../../api/kit/globalId.js';
import { Checklist } from '../../db/checklist.js';
import { oneAtATime } from '../../db/oneAtATime.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { knownItem } from '../items/knownItem.js';
import { presentItem } from '../items/presentItem.js';
import { checkPlace } from './checkPlace.js';
import { MoveEntity } from './move.entity.js';
import type { MoveItemInput } from './move.inputs.js';
import { recordMove } from './recordMove.js';

/** Moves follow one another in time; what sits in a housing goes with it, and not alone. */
export async function moveItem(work: UnitOfWork, input: MoveItemInput): Promise<string> {
  const id = recordId(itemTypes, input.itemId, ['itemId']);
  await oneAtATime(work, 'housing');
  const item = await presentItem(work, id, ['itemId']);
  const check = new Checklist(work);
  const placeId = optionalRecordId('Place', input.placeId ?? null, ['placeId']);
  await checkPlace(work, check, placeId);
  check.that(placeId !== item.placeId, 'It stands there already.', ['placeId']);
  if (item.housedInId !== null) {
    const housing = await knownItem(work, item.housedInId, ['itemId']);
    const message = `It is housed in ${housing.inventoryNumber}. Move that, or take it out first.`;
    check.add({ code: 'CONFLICT', message, path: ['itemId'] });
  }
  const movedAt = input.movedAt?.toISOString() ?? work.now;
  check.that(movedAt <= work.now, 'This is in the future. Write a move down when it is made.', [
    'movedAt',
  ]);
  const [last] = await work.manager.find(MoveEntity, {
    where: { itemId: id },
    order: { movedAt: 'DESC' },
    take: 1,
  });
  if (last && movedAt < last.movedAt) {
    check.refuse(`It was moved last at ${last.movedAt}. Give a later time.`, ['movedAt']);
  }
  const note = check.text(input.note, ['note']);
  check.done();
  await recordMove(work, item, { placeId, movedAt, note });
  return id;
}
