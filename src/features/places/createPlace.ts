import { optionalRecordId } from '../../api/kit/globalId.js';
import { insertRow } from '../../db/insertRow.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { Checklist } from '../../db/checklist.js';
import type { CreatePlaceInput } from './place.inputs.js';
import { PlaceEntity } from './place.entity.js';

export async function createPlace(work: UnitOfWork, input: CreatePlaceInput): Promise<string> {
  const check = new Checklist(work);
  const name = check.words(input.name, ['name']);
  const withinId = optionalRecordId('Place', input.withinId ?? null, ['withinId']);
  await check.exists('place', withinId, ['withinId']);
  check.done();
  const place = await insertRow(work, PlaceEntity, {
    name,
    withinId,
    note: input.note ?? null,
    retiredAt: null,
  });
  return place.id;
}
