import type { AccessoryRole } from '../items/accessoryRole.js';

/** What a row of a list says, in our terms; models, places and parties by name. */
export interface ItemDraft {
  line: number;
  inventoryNumber: string;
  name: string | null;
  model: { maker: string; designation: string } | null;
  role: AccessoryRole | null;
  serialNumber: string | null;
  madeEdtf: string | null;
  place: string | null;
  note: string | null;
  /** Null where day or price are missing: what is known of the purchase is then in the note. */
  purchase: Purchase | null;
}

export interface Purchase {
  acquiredOn: string;
  priceMinorUnits: number;
  currency: string;
  seller: string | null;
  venue: string | null;
  note: string | null;
}
