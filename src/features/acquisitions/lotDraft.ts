import type { NewRow } from '../../db/insertRow.js';
import type { LotLineWeight } from '../../domain/money/lotWeights.js';
import type { ItemEntity } from '../items/item.entity.js';

/** An item to be written down with its lot; without a number the next free one is given. */
export type NewItemDraft = Omit<NewRow<ItemEntity>, 'inventoryNumber'> & {
  inventoryNumber: string | null;
};

/** A line of a lot as a person gave it, checked as far as one line can be. */
export interface LotLineDraft extends LotLineWeight {
  itemId: string | null;
  newItem: NewItemDraft | null;
  sundries: string | null;
}
