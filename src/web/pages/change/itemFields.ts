import type { AccessoryRole } from '../../gql/graphql.js';
import type { ChangedSet } from './ChangePage.js';

export type ItemFieldName =
  'inventoryNumber' | 'name' | 'serialNumber' | 'madeEdtf' | 'note' | 'role';

/** What can be typed of an item, each field as text. */
export const itemFields = (item: ChangedSet): Record<ItemFieldName, string> => ({
  inventoryNumber: item.inventoryNumber,
  name: item.name ?? '',
  serialNumber: item.serialNumber ?? '',
  madeEdtf: item.madeEdtf ?? '',
  note: item.note ?? '',
  role: item.__typename === 'Accessory' ? item.role : '',
});

const roles: Record<AccessoryRole, true> = {
  AMPLIFIER: true,
  ANTENNA_COUPLER: true,
  CONTROL: true,
  HEADPHONES: true,
  KEY: true,
  MICROPHONE: true,
  POWER_SUPPLY: true,
  SPEAKER: true,
  TEST_GEAR: true,
  VFO: true,
};

export const isRole = (value: string): value is AccessoryRole => Object.hasOwn(roles, value);
