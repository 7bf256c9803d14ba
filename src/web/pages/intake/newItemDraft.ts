import type { AccessoryRole, ItemKind } from '../../gql/graphql.js';

export interface NewItemDraft {
  kind: ItemKind;
  role: AccessoryRole;
  inventoryNumber: string;
  name: string;
  /** Maker and designation as typed. */
  model: string;
  serialNumber: string;
  placeId: string;
  madeEdtf: string;
  note: string;
}

export const emptyNewItem: NewItemDraft = {
  kind: 'RIG',
  role: 'POWER_SUPPLY',
  inventoryNumber: '',
  name: '',
  model: '',
  serialNumber: '',
  placeId: '',
  madeEdtf: '',
  note: '',
};

/** As a model is called in the list from which it is chosen. */
export const modelName = ({ maker, designation }: { maker: string; designation: string }): string =>
  `${maker} ${designation}`;
