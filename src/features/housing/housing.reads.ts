import { list, one } from '../../api/kit/relations.js';
import { itemColumns } from '../items/itemColumns.js';

export const housingRelationsOfItem = {
  housedIn: one('Accessory', 'housedInId'),
  houses: list('Accessory', {
    table: 'item',
    columns: itemColumns,
    parentColumn: 'housed_in_id',
    orderBy: 'item.inventory_number',
  }),
};
