import { recordId } from '../../api/kit/globalId.js';
import { pastInstant } from '../../api/kit/pastInstant.js';
import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import { Refusal } from '../../db/refusal.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { HazardEntity } from './hazard.entity.js';
import type { ClearHazardInput } from './hazard.inputs.js';
import { hazardGuide } from './hazardGuide.js';

/** Nothing clears a hazard but a check that is named in words, by whoever did it. */
export async function clearHazard(work: UnitOfWork, input: ClearHazardInput): Promise<string> {
  const id = recordId('Hazard', input.id);
  const hazard = await work.manager.findOneBy(HazardEntity, { id });
  if (!hazard) throw Refusal.notFound('hazard');
  const check = new Checklist(work);
  const clearedByCheck = check.words(input.clearedByCheck, ['clearedByCheck'], 1000);
  const isNamed = clearedByCheck === '' || /\S\s+\S/.test(clearedByCheck);
  const wanted = hazardGuide(hazard.kind).clearedBy;
  check.that(
    isNamed,
    `“${clearedByCheck}” names no check. Say what was done and what it showed; usual is: ${wanted}.`,
    ['clearedByCheck'],
  );
  const clearedById = recordId('Party', input.clearedById, ['clearedById']);
  await check.exists('party', clearedById, ['clearedById']);
  const clearedAt = pastInstant(check, work, input.clearedAt, ['clearedAt']);
  check.that(
    clearedAt >= hazard.raisedAt,
    `It was noticed at ${hazard.raisedAt}; it cannot have been cleared before that.`,
    ['clearedAt'],
  );
  check.done();
  if (hazard.version === input.version && hazard.clearedAt !== null) {
    throw Refusal.conflict(`It was cleared at ${hazard.clearedAt} already.`, ['id']);
  }
  await changeRow(work, HazardEntity, id, input.version, {
    clearedAt,
    clearedByCheck,
    clearedById,
  });
  return id;
}
