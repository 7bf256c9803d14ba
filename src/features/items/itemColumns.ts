import { selectColumns } from '../../api/kit/selectColumns.js';

/** Select list of an item's plain fields, from `item`. */
export const itemColumns = [
  `CASE item.kind WHEN 'RIG' THEN 'Rig' ELSE 'Accessory' END AS "__typename"`,
  selectColumns('item', [
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
  ]),
].join(', ');
