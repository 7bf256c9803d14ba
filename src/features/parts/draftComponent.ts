import { checkedRecordId } from '../../api/kit/checkedRecordId.js';
import type { Checklist } from '../../db/checklist.js';
import type { NewRow } from '../../db/insertRow.js';
import { shortText } from '../../db/shortText.js';
import type { ComponentEntity } from './component.entity.js';
import type { NewComponentInput } from './component.inputs.js';

/** A new component, checked and not yet kept. */
export async function draftComponent(
  check: Checklist,
  input: NewComponentInput,
  path: string[],
): Promise<NewRow<ComponentEntity>> {
  const partTypeId = checkedRecordId(check, 'PartType', input.partTypeId, [...path, 'partTypeId']);
  await check.exists('part_type', partTypeId, [...path, 'partTypeId']);
  const marking = shortText(check, input.marking, [...path, 'marking'], 200);
  check.that(
    typeof input.partTypeId === 'string' || marking !== null,
    'Say what it is: give its part type or its marking.',
    path,
  );
  return {
    partTypeId,
    marking,
    dateCode: shortText(check, input.dateCode, [...path, 'dateCode'], 40),
    origin: input.origin,
    note: check.text(input.note, [...path, 'note']),
  };
}
