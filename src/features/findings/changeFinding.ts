import { recordId } from '../../api/kit/globalId.js';
import { pastInstant } from '../../api/kit/pastInstant.js';
import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { FindingEntity } from './finding.entity.js';
import type { ChangeFindingInput } from './finding.inputs.js';
import { longestFinding } from './longestFinding.js';

export async function changeFinding(work: UnitOfWork, input: ChangeFindingInput): Promise<string> {
  const id = recordId('Finding', input.id);
  const check = new Checklist(work);
  const note =
    typeof input.note === 'string' ? check.words(input.note, ['note'], longestFinding) : undefined;
  const seenAt = input.seenAt && pastInstant(check, work, input.seenAt, ['seenAt']);
  check.done();
  await changeRow(work, FindingEntity, id, input.version, {
    ...(input.zone && { zone: input.zone }),
    ...(input.severity && { severity: input.severity }),
    ...(note !== undefined && { note }),
    ...(seenAt && { seenAt }),
  });
  return id;
}
