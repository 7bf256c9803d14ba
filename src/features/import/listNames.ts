import type { RowSource } from '../../db/rowSource.js';
import type { ItemKind } from '../items/itemKind.js';
import type { FoundName } from './foundName.js';
import type { ItemDraft } from './itemDraft.js';
import type { ListField } from './listField.js';
import { ModelNames } from './modelNames.js';
import { PartyNames } from './partyNames.js';
import { PlaceNames } from './placeNames.js';
import type { ResolvedItem } from './resolvedItem.js';

/** Everything that a list may name, as it stands in the collection or will once it is loaded. */
export class ListNames {
  private constructor(
    readonly models: ModelNames,
    readonly places: PlaceNames,
    readonly parties: PartyNames,
  ) {}

  static async load(query: RowSource['rows']): Promise<ListNames> {
    return new ListNames(
      await ModelNames.load(query),
      await PlaceNames.load(query),
      await PartyNames.load(query),
    );
  }

  /** Ids for names; what is unclear goes to `refuse`. */
  resolve(
    draft: ItemDraft,
    kind: ItemKind,
    refuse: (field: ListField, message: string) => void,
  ): ResolvedItem {
    const idOf = (field: ListField, found: FoundName | null): string | null => {
      if (found === null) return null;
      if ('id' in found) return found.id;
      refuse(field, found.why);
      return null;
    };
    const seller = draft.purchase?.seller ?? null;
    return {
      draft,
      modelId: idOf('MODEL', draft.model && this.models.find(draft.model, kind)),
      placeId: idOf('PLACE', draft.place === null ? null : this.places.find(draft.place)),
      sellerId: idOf('SELLER', seller === null ? null : this.parties.find(seller)),
    };
  }
}
