import { checkedRecordId } from '../../api/kit/checkedRecordId.js';
import type { Checklist } from '../../db/checklist.js';
import type { NewLotItemInput } from './lotLine.inputs.js';
import type { NewItemDraft } from './lotDraft.js';

const longestNumber = 40;

/** A new item as given with its lot; that its model is there is checked for the whole lot at once. */
export function draftNewItem(
  check: Checklist,
  input: NewLotItemInput,
  path: string[],
): NewItemDraft {
  const { kind, inventoryNumber, name, serialNumber } = input;
  const role = input.role ?? null;
  check.that(
    (kind === 'ACCESSORY') === (role !== null),
    kind === 'RIG'
      ? 'A rig has no role: leave it out, or write the thing down as an accessory.'
      : 'Say what the accessory is for.',
    [...path, 'role'],
  );
  const words = (text: string | null | undefined, field: string, longest = 200): string | null =>
    typeof text === 'string' ? check.words(text, [...path, field], longest) : null;
  return {
    kind,
    role,
    inventoryNumber: words(inventoryNumber, 'inventoryNumber', longestNumber),
    name: words(name, 'name'),
    serialNumber: words(serialNumber, 'serialNumber'),
    modelId: checkedRecordId(check, 'Model', input.modelId, [...path, 'modelId']),
    note: check.text(input.note, [...path, 'note']),
    madeEdtf: null,
    placeId: null,
    housedInId: null,
    retiredAt: null,
    retiredReason: null,
  };
}
