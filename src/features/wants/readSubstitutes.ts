import { checkedRecordId } from '../../api/kit/checkedRecordId.js';
import type { Checklist } from '../../db/checklist.js';
import { insertRow } from '../../db/insertRow.js';
import { removeRow } from '../../db/removeRow.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { WantSubstituteEntity } from './wantSubstitute.entity.js';

const mostSubstitutes = 20;

/** The part types that will do instead; what is wrong goes to the checklist. */
export async function readSubstitutes(
  check: Checklist,
  substituteIds: readonly string[],
): Promise<string[]> {
  const path = ['substituteIds'];
  check.that(
    substituteIds.length <= mostSubstitutes,
    `${mostSubstitutes} is the most; these are ${substituteIds.length}.`,
    path,
  );
  const ids: string[] = [];
  for (const [index, text] of substituteIds.slice(0, mostSubstitutes).entries()) {
    const at = [...path, String(index)];
    const id = checkedRecordId(check, 'PartType', text, at);
    await check.exists('part_type', id, at);
    if (id !== null && !ids.includes(id)) ids.push(id);
  }
  return ids;
}

/** Leaves the want with these substitutes and no others. */
export async function keepSubstitutes(
  work: UnitOfWork,
  wantId: string,
  partTypeIds: readonly string[],
): Promise<void> {
  const kept = await work.manager.findBy(WantSubstituteEntity, { wantId });
  for (const { id, partTypeId } of kept) {
    if (!partTypeIds.includes(partTypeId)) await removeRow(work, WantSubstituteEntity, id);
  }
  for (const partTypeId of partTypeIds) {
    if (kept.some((one) => one.partTypeId === partTypeId)) continue;
    await insertRow(work, WantSubstituteEntity, { wantId, partTypeId });
  }
}
