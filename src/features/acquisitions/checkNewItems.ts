import type { Checklist } from '../../db/checklist.js';
import { listParameter } from '../../db/dialect.js';
import type { RowSource } from '../../db/rowSource.js';
import type { ItemKind } from '../items/itemKind.js';
import type { LotLineDraft } from './lotDraft.js';

/** The models of new items are there and fit their kind; their numbers are free. Two statements. */
export async function checkNewItems(
  { rows, dialect }: RowSource,
  check: Checklist,
  lines: readonly LotLineDraft[],
  pathOf: (line: number) => string[],
): Promise<void> {
  const items = lines.map((line) => line.newItem);
  const given = (key: 'modelId' | 'inventoryNumber') => items.flatMap((item) => item?.[key] ?? []);
  const models = await rows<{ id: string; kind: ItemKind }>(
    `SELECT id AS "id", item_kind AS "kind" FROM model WHERE ${dialect.isAnyOf('id')}`,
    [listParameter(given('modelId'))],
  );
  const kinds = new Map(models.map((model) => [model.id, model.kind]));
  const used = await rows<{ number: string }>(
    `SELECT inventory_number AS "number" FROM item WHERE ${dialect.isAnyOf('inventory_number')}`,
    [listParameter(given('inventoryNumber'))],
  );
  const taken = new Set(used.map(({ number }) => number));
  items.forEach((item, index) => {
    if (!item) return;
    const path = [...pathOf(index), 'newItem'];
    if (item.modelId !== null) {
      const kind = kinds.get(item.modelId);
      const at = [...path, 'modelId'];
      if (kind === undefined) {
        check.add({ code: 'NOT_FOUND', message: 'There is no model with this id.', path: at });
      } else if (kind !== item.kind) {
        check.refuse(`The model is of kind ${kind}, and the item of kind ${item.kind}.`, at);
      }
    }
    const { inventoryNumber } = item;
    if (inventoryNumber === null) return;
    if (taken.has(inventoryNumber)) {
      const message = `${inventoryNumber} is the number of another item; leave it out for the next free one.`;
      check.add({ code: 'CONFLICT', message, path: [...path, 'inventoryNumber'] });
    }
    taken.add(inventoryNumber);
  });
}
