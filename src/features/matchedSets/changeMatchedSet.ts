import { recordId } from '../../api/kit/globalId.js';
import { isGiven } from '../../api/kit/isGiven.js';
import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import { insertRow } from '../../db/insertRow.js';
import { oneAtATime } from '../../db/oneAtATime.js';
import { removeRow } from '../../db/removeRow.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { checkPercent } from './checkPercent.js';
import { MatchedSetEntity } from './matchedSet.entity.js';
import type { ChangeMatchedSetInput } from './matchedSet.inputs.js';
import { MatchedSetMemberEntity } from './matchedSetMember.entity.js';
import { readMembers } from './readMembers.js';

export async function changeMatchedSet(
  work: UnitOfWork,
  input: ChangeMatchedSetInput,
): Promise<string> {
  const id = recordId('MatchedSet', input.id);
  await oneAtATime(work, `matched set ${id}`);
  const check = new Checklist(work);
  const { name, largestMismatchPercent, source, note } = input;
  const changes = {
    ...(isGiven(name) && { name: check.words(name, ['name']) }),
    ...(isGiven(largestMismatchPercent) && { largestMismatchPercent }),
    ...(source !== undefined && { source: check.text(source, ['source']) }),
    ...(note !== undefined && { note: check.text(note, ['note']) }),
  };
  if (isGiven(largestMismatchPercent)) {
    checkPercent(check, largestMismatchPercent, ['largestMismatchPercent']);
  }
  const wanted = isGiven(input.componentIds) ? await readMembers(check, input.componentIds) : null;
  check.done();
  await changeRow(work, MatchedSetEntity, id, input.version, changes);
  if (wanted === null) return id;
  const members = await work.manager.findBy(MatchedSetMemberEntity, { setId: id });
  for (const member of members) {
    if (!wanted.includes(member.componentId)) {
      await removeRow(work, MatchedSetMemberEntity, member.id);
    }
  }
  for (const componentId of wanted) {
    if (members.some((member) => member.componentId === componentId)) continue;
    await insertRow(work, MatchedSetMemberEntity, { setId: id, componentId });
  }
  return id;
}
