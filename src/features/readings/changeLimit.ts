import { recordId } from '../../api/kit/globalId.js';
import { isGiven } from '../../api/kit/isGiven.js';
import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import { Refusal } from '../../db/refusal.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { checkLimit } from './checkLimit.js';
import { LimitEntity } from './limit.entity.js';
import type { ChangeLimitInput } from './limit.inputs.js';

export async function changeLimit(work: UnitOfWork, input: ChangeLimitInput): Promise<string> {
  const id = recordId('Limit', input.id);
  const before = await work.manager.findOneBy(LimitEntity, { id });
  if (!before) throw Refusal.notFound('limit');
  const check = new Checklist(work);
  const { lower, upper, unit, source } = input;
  const changes = {
    ...(lower !== undefined && { lower }),
    ...(upper !== undefined && { upper }),
    ...(isGiven(unit) && { unit }),
    ...(source !== undefined && { source: check.text(source, ['source']) }),
  };
  checkLimit(check, { ...before, ...changes });
  check.done();
  await changeRow(work, LimitEntity, id, input.version, changes);
  return id;
}
