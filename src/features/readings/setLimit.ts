import { recordId, splitGlobalId } from '../../api/kit/globalId.js';
import { Checklist } from '../../db/checklist.js';
import { insertRow } from '../../db/insertRow.js';
import { oneAtATime } from '../../db/oneAtATime.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { checkLimit } from './checkLimit.js';
import { LimitEntity } from './limit.entity.js';
import type { SetLimitInput } from './limit.inputs.js';

/** One limit for a quantity and tier; a second one is a change of the first. */
export async function setLimit(work: UnitOfWork, input: SetLimitInput): Promise<string> {
  const ofId = recordId(['PartType', 'Model'], input.ofId, ['ofId']);
  const isOfModel = splitGlobalId(input.ofId)?.typeName === 'Model';
  const check = new Checklist(work);
  await check.exists(isOfModel ? 'model' : 'part_type', ofId, ['ofId']);
  const limit = {
    partTypeId: isOfModel ? null : ofId,
    modelId: isOfModel ? ofId : null,
    quantity: check.words(input.quantity, ['quantity'], 80),
    tier: input.tier ?? null,
    lower: input.lower ?? null,
    upper: input.upper ?? null,
    unit: input.unit,
    source: check.text(input.source, ['source']),
  };
  checkLimit(check, limit);
  check.done();
  await oneAtATime(work, `limits of ${ofId}`);
  const alike = await work.manager.findBy(LimitEntity, {
    ...(isOfModel ? { modelId: ofId } : { partTypeId: ofId }),
    quantity: limit.quantity,
  });
  const twin = alike.find(({ tier }) => tier === limit.tier);
  if (twin) {
    const range = `${twin.lower ?? '…'} to ${twin.upper ?? '…'} ${twin.unit}`;
    const message = `There is a limit of ${limit.quantity} already: ${range}. Change that one.`;
    check.add({ code: 'CONFLICT', message, path: ['quantity'] });
  }
  check.done();
  return (await insertRow(work, LimitEntity, limit)).id;
}
