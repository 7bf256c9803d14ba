import { itemTypes, recordId } from '../../api/kit/globalId.js';
import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import { insertRow } from '../../db/insertRow.js';
import { oneAtATime } from '../../db/oneAtATime.js';
import { Refusal } from '../../db/refusal.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { knownItem } from '../items/knownItem.js';
import { ItemIdentityEntity } from './itemIdentity.entity.js';
import type { IdentifyItemInput } from './objectId.inputs.js';

const texts = [
  'objectType',
  'materials',
  'measurements',
  'inscriptions',
  'distinguishingFeatures',
  'title',
  'subject',
  'maker',
  'placeOfOrigin',
  'relatedPapers',
  'description',
] as const;
type Texts = Record<(typeof texts)[number], string | null>;

/** Writes down what tells an item from every other, or corrects it. @returns the item's id. */
export async function identifyItem(work: UnitOfWork, input: IdentifyItemInput): Promise<string> {
  const itemId = recordId(itemTypes, input.itemId, ['itemId']);
  await oneAtATime(work, 'item identity');
  await knownItem(work, itemId, ['itemId']);
  const before = await work.manager.findOneBy(ItemIdentityEntity, { itemId });
  const check = new Checklist(work);
  const given = Object.fromEntries(
    texts.map((field) => [
      field,
      input[field] === undefined ? (before?.[field] ?? null) : check.text(input[field], [field]),
    ]),
  ) as Texts;
  const notApplicable = input.notApplicable ?? before?.notApplicable ?? [];
  check.done();
  const values = { ...given, notApplicable: [...new Set(notApplicable)] };
  if (before) {
    const seen = input.version ?? 0;
    if (seen !== before.version) throw Refusal.stale(before.version, seen);
    await changeRow(work, ItemIdentityEntity, before.id, seen, values);
  } else {
    await insertRow(work, ItemIdentityEntity, { itemId, ...values });
  }
  return itemId;
}
