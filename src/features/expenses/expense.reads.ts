import { childPages } from '../../api/kit/childPages.js';
import { one } from '../../api/kit/relations.js';
import { selectColumns } from '../../api/kit/selectColumns.js';
import { tableReads } from '../../api/kit/tableReads.js';
import type { Relation } from '../../api/kit/typeReads.js';

const columns = selectColumns('expense', [
  'id',
  'version',
  'itemId',
  'projectId',
  'spentOn',
  'amountMinorUnits',
  'currency',
  'description',
  'paidToId',
  'note',
  'recordedAt',
  'changedAt',
]);

export const expenseReads = tableReads('Expense', 'expense', columns, {
  item: one('Item', 'itemId'),
  project: one('Project', 'projectId'),
  paidTo: one('Party', 'paidToId'),
});

const expensesOf = (parentColumn: string): Relation =>
  childPages('Expense', {
    table: 'expense',
    columns,
    parentColumn,
    sortColumn: 'spent_on',
    sortName: 'spentOn',
    direction: 'DESC',
  });

/** What expenses add to an item. */
export const expenseRelationsOfItem: Record<string, Relation> = { expenses: expensesOf('item_id') };
