import type { ItemDraft } from './itemDraft.js';

/** A draft whose names are ids. */
export interface ResolvedItem {
  draft: ItemDraft;
  modelId: string | null;
  placeId: string | null;
  sellerId: string | null;
}
