import { optionalRecordId, recordId } from '../../api/kit/globalId.js';
import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import { Refusal } from '../../db/refusal.js';
import { shortText } from '../../db/shortText.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { ComponentEntity } from './component.entity.js';
import type { ChangeComponentInput } from './component.inputs.js';

export async function changeComponent(
  work: UnitOfWork,
  input: ChangeComponentInput,
): Promise<string> {
  const id = recordId('Component', input.id);
  const before = await work.manager.findOneBy(ComponentEntity, { id });
  if (!before) throw Refusal.notFound('component');
  const check = new Checklist(work);
  const given = optionalRecordId('PartType', input.partTypeId, ['partTypeId']);
  await check.exists('part_type', given ?? null, ['partTypeId']);
  const partTypeId = given === undefined ? before.partTypeId : given;
  const marking =
    input.marking === undefined
      ? before.marking
      : shortText(check, input.marking, ['marking'], 200);
  const dateCode =
    input.dateCode === undefined
      ? before.dateCode
      : shortText(check, input.dateCode, ['dateCode'], 40);
  const note = input.note === undefined ? before.note : check.text(input.note, ['note']);
  check.that(
    partTypeId !== null || marking !== null,
    'Say what it is: leave its part type or its marking.',
    ['marking'],
  );
  check.done();
  await changeRow(work, ComponentEntity, id, input.version, {
    partTypeId,
    marking,
    dateCode,
    note,
    origin: input.origin ?? before.origin,
  });
  return id;
}
