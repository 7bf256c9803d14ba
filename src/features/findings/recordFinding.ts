import { itemTypes, recordId } from '../../api/kit/globalId.js';
import { pastInstant } from '../../api/kit/pastInstant.js';
import { Checklist } from '../../db/checklist.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import type { RecordFindingInput } from './finding.inputs.js';
import { insertFindings } from './insertFindings.js';
import { longestFinding } from './longestFinding.js';

/** Something seen at the bench, with no inspection around it. */
export async function recordFinding(work: UnitOfWork, input: RecordFindingInput): Promise<string> {
  const itemId = recordId(itemTypes, input.itemId, ['itemId']);
  const check = new Checklist(work);
  await check.exists('item', itemId, ['itemId']);
  const note = check.words(input.note, ['note'], longestFinding);
  const seenAt = pastInstant(check, work, input.seenAt, ['seenAt']);
  check.done();
  const seen = { itemId, inspectionId: null, seenAt };
  const [id] = await insertFindings(work, seen, [{ ...input, note }]);
  return id as string;
}
