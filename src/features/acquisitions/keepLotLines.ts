import { insertRows, type NewRow } from '../../db/insertRow.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { ItemEntity } from '../items/item.entity.js';
import { nextInventoryNumbers } from '../items/nextInventoryNumbers.js';
import type { LotLineDraft } from './lotDraft.js';
import { LotLineEntity } from './lotLine.entity.js';

/** Writes down the new items of checked lines, and the lines. @returns the lines as kept. */
export async function keepLotLines(
  work: UnitOfWork,
  acquisitionId: string,
  lines: readonly LotLineDraft[],
  firstOrdinal: number,
): Promise<LotLineEntity[]> {
  const drafts = lines.flatMap((line) => line.newItem ?? []);
  const free = new Map<string, string[]>();
  const given = drafts.flatMap((item) => item.inventoryNumber ?? []);
  for (const kind of ['RIG', 'ACCESSORY'] as const) {
    const unnumbered = drafts.filter(
      (item) => item.kind === kind && item.inventoryNumber === null,
    ).length;
    free.set(kind, await nextInventoryNumbers(work, kind, unnumbered, given));
  }
  const numbered = drafts.map((item): NewRow<ItemEntity> => {
    const inventoryNumber = item.inventoryNumber ?? free.get(item.kind)?.shift();
    if (inventoryNumber === undefined) throw new Error(`no number is left for a ${item.kind}`);
    return { ...item, inventoryNumber };
  });
  const items = numbered.length > 0 ? await insertRows(work, ItemEntity, numbered) : [];
  return insertRows(
    work,
    LotLineEntity,
    lines.map((line, index) => ({
      acquisitionId,
      ordinal: firstOrdinal + index,
      itemId: line.newItem ? (items.shift()?.id ?? null) : line.itemId,
      sundries: line.sundries,
      statedShare: line.statedShare,
      statedValueMinorUnits: line.statedValueMinorUnits,
    })),
  );
}
