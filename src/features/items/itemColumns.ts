import { spareColumns, type AskedOfRows } from '../../api/kit/spareColumns.js';

const names = [
  'id',
  'version',
  'inventoryNumber',
  'name',
  'modelId',
  'role',
  'serialNumber',
  'madeEdtf',
  'placeId',
  'housedInId',
  'note',
  'retiredAt',
  'retiredReason',
  'recordedAt',
  'changedAt',
];

const spared = spareColumns('item', names, {
  version: [],
  name: [],
  serialNumber: [],
  madeEdtf: [],
  note: [],
  retiredAt: [],
  retiredReason: [],
  recordedAt: [],
  changedAt: [],
});

/** Select list of an item's plain fields, from `item`. */
export const columnsOfItem = (asked: AskedOfRows): string =>
  `CASE item.kind WHEN 'RIG' THEN 'Rig' ELSE 'Accessory' END AS "__typename", ${spared(asked)}`;

/** The same with nothing left out. */
export const itemColumns = columnsOfItem(undefined);
