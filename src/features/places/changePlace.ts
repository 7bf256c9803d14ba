import { optionalRecordId, recordId } from '../../api/kit/globalId.js';
import { isGiven } from '../../api/kit/isGiven.js';
import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import { oneAtATime } from '../../db/oneAtATime.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { PlaceEntity } from './place.entity.js';
import type { ChangePlaceInput } from './place.inputs.js';
import { refuseCircle } from './refuseCircle.js';

export async function changePlace(work: UnitOfWork, input: ChangePlaceInput): Promise<string> {
  const id = recordId('Place', input.id);
  const check = new Checklist(work);
  const name = isGiven(input.name) ? check.words(input.name, ['name']) : undefined;
  const withinId = optionalRecordId('Place', input.withinId, ['withinId']);
  await check.exists('place', withinId ?? null, ['withinId']);
  check.done();
  if (withinId) {
    await oneAtATime(work, 'places');
    await refuseCircle(work, id, withinId);
  }
  await changeRow(work, PlaceEntity, id, input.version, {
    ...(name !== undefined && { name }),
    ...(withinId !== undefined && { withinId }),
    ...(input.note !== undefined && { note: input.note }),
    ...(isGiven(input.isRetired) && { retiredAt: input.isRetired ? work.now : null }),
  });
  return id;
}
