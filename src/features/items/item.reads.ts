import type { Row, TypeReads } from '../../api/kit/typeReads.js';
import { listParameter } from '../../db/dialect.js';
import { columnsOfItem } from './itemColumns.js';
import { itemRelations } from './itemRelations.js';

const kinds = {
  Item: '',
  Rig: ` AND item.kind = 'RIG'`,
  Accessory: ` AND item.kind = 'ACCESSORY'`,
};

export const itemReads: TypeReads[] = Object.entries(kinds).map(([typeName, ofKind]) => ({
  typeName,
  table: 'item',
  byIds: ({ database: { reader } }, ids, asked) =>
    reader.rows<Row>(
      `SELECT ${columnsOfItem(asked)} FROM item WHERE ${reader.dialect.isAnyOf('item.id')}${ofKind}`,
      [listParameter(ids)],
    ),
  relations: itemRelations,
}));
