import { Checklist } from '../../db/checklist.js';
import { insertRow, insertRows } from '../../db/insertRow.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { checkPercent } from './checkPercent.js';
import { MatchedSetEntity } from './matchedSet.entity.js';
import type { CreateMatchedSetInput } from './matchedSet.inputs.js';
import { MatchedSetMemberEntity } from './matchedSetMember.entity.js';
import { readMembers } from './readMembers.js';

export async function createMatchedSet(
  work: UnitOfWork,
  input: CreateMatchedSetInput,
): Promise<string> {
  const check = new Checklist(work);
  const values = {
    name: check.words(input.name, ['name']),
    quantity: check.words(input.quantity, ['quantity'], 80),
    tier: input.tier,
    largestMismatchPercent: input.largestMismatchPercent,
    source: check.text(input.source, ['source']),
    note: check.text(input.note, ['note']),
  };
  checkPercent(check, input.largestMismatchPercent, ['largestMismatchPercent']);
  const componentIds = await readMembers(check, input.componentIds);
  check.done();
  const { id } = await insertRow(work, MatchedSetEntity, values);
  await insertRows(
    work,
    MatchedSetMemberEntity,
    componentIds.map((componentId) => ({ setId: id, componentId })),
  );
  return id;
}
