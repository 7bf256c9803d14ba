import { childPages } from '../../api/kit/childPages.js';
import { tableReads } from '../../api/kit/tableReads.js';
import type { Relation, Row } from '../../api/kit/typeReads.js';
import { changedFields } from './changedFields.js';

const columns = `change.id AS "id", change.action AS "action", change.changed_at AS "at",
  change."before" AS "before", change."after" AS "after"`;

const fields: Relation = (_context, changes) =>
  Promise.resolve({
    values: changes.map((change: Row) => changedFields(change['before'], change['after'])),
    children: [],
    childType: null,
  });

export const changeReads = tableReads('Change', 'change', columns, { changedFields: fields });

export const historyRelationsOfItem = {
  history: childPages('Change', {
    table: 'change',
    columns,
    parentColumn: 'record_id',
    sortColumn: 'changed_at',
    sortName: 'at',
    direction: 'DESC',
    where: `change.record_table = 'item'`,
  }),
};
