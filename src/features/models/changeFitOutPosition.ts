import { optionalRecordId, recordId } from '../../api/kit/globalId.js';
import { isGiven } from '../../api/kit/isGiven.js';
import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import { Refusal } from '../../db/refusal.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { checkWeight } from './checkWeight.js';
import { FitOutPositionEntity } from './fitOutPosition.entity.js';
import type { ChangeFitOutPositionInput } from './fitOutPosition.inputs.js';

export async function changeFitOutPosition(
  work: UnitOfWork,
  input: ChangeFitOutPositionInput,
): Promise<string> {
  const id = recordId('FitOutPosition', input.id);
  const before = await work.manager.findOneBy(FitOutPositionEntity, { id });
  if (!before) throw Refusal.notFound('position');
  const check = new Checklist(work);
  const { zone, isRequired, ordinal, note } = input;
  const designator = isGiven(input.designator)
    ? check.words(input.designator, ['designator'], 60)
    : before.designator;
  const twin = await work.manager.findOneBy(FitOutPositionEntity, {
    modelId: before.modelId,
    designator,
  });
  if (twin && twin.id !== id) {
    const message = `The fit-out has ${designator} already. Choose another designator.`;
    check.add({ code: 'CONFLICT', message, path: ['designator'] });
  }
  const partTypeId = optionalRecordId('PartType', input.partTypeId, ['partTypeId']);
  await check.exists('part_type', partTypeId ?? null, ['partTypeId']);
  const isPlace = !isGiven(ordinal) || (ordinal >= 1 && ordinal <= 1_000_000);
  check.that(isPlace, 'The order counts from 1.', ['ordinal']);
  const changes = {
    designator,
    ...(isGiven(zone) && { zone }),
    ...(partTypeId !== undefined && { partTypeId }),
    ...(isGiven(isRequired) && { isRequired }),
    ...(isGiven(ordinal) && { ordinal }),
    ...(input.weight !== undefined && { weight: checkWeight(check, input.weight, ['weight']) }),
    ...(note !== undefined && { note: check.text(note, ['note']) }),
  };
  check.done();
  await changeRow(work, FitOutPositionEntity, id, input.version, changes);
  return id;
}
