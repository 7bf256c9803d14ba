import { childPages } from '../../api/kit/childPages.js';
import { list, one } from '../../api/kit/relations.js';
import { selectColumns } from '../../api/kit/selectColumns.js';
import { tableReads } from '../../api/kit/tableReads.js';
import type { Relation } from '../../api/kit/typeReads.js';
import { whereaboutsRelationsOfItem } from './whereabouts.reads.js';

const loanColumns = selectColumns('loan', [
  'id',
  'version',
  'itemId',
  'borrowerId',
  'direction',
  'lentOn',
  'dueOn',
  'returnedOn',
  'placeName',
  'purpose',
  'note',
]);
const lossColumns = selectColumns('item_loss', [
  'id',
  'version',
  'itemId',
  'kind',
  'missedOn',
  'foundOn',
  'circumstances',
  'reportedTo',
  'reportNumber',
  'note',
]);
const disposalColumns = selectColumns('disposal', [
  'id',
  'version',
  'kind',
  'disposedOn',
  'toPartyId',
  'venue',
  'priceMinorUnits',
  'currency',
  'note',
]);
const lineColumns = `${selectColumns('disposal_line', ['id', 'itemId', 'priceMinorUnits'])},
  (SELECT currency FROM disposal WHERE disposal.id = disposal_line.disposal_id) AS "currency"`;

export const loanReads = tableReads('Loan', 'loan', loanColumns, {
  item: one('Item', 'itemId'),
  borrower: one('Party', 'borrowerId'),
});

export const itemLossReads = tableReads('ItemLoss', 'item_loss', lossColumns, {
  item: one('Item', 'itemId'),
});

export const disposalReads = tableReads('Disposal', 'disposal', disposalColumns, {
  toParty: one('Party', 'toPartyId'),
  lines: list('DisposalLine', {
    table: 'disposal_line',
    columns: lineColumns,
    parentColumn: 'disposal_id',
    orderBy: 'disposal_line.ordinal',
  }),
  costs: list('DisposalCost', {
    table: 'disposal_cost',
    columns: selectColumns('disposal_cost', ['id', 'description', 'amountMinorUnits', 'currency']),
    parentColumn: 'disposal_id',
    orderBy: 'disposal_cost.id',
  }),
});

export const disposalLineReads = tableReads('DisposalLine', 'disposal_line', lineColumns, {
  item: one('Item', 'itemId'),
});

const ofItem = (typeName: string, table: string, columns: string, by: string, sortName: string) =>
  childPages(typeName, {
    table,
    columns,
    parentColumn: 'item_id',
    sortColumn: by,
    sortName,
    direction: 'DESC',
  });

/** Where an item is, and what became of it before. */
export const outOfHandRelationsOfItem: Record<string, Relation> = {
  ...whereaboutsRelationsOfItem,
  loans: ofItem('Loan', 'loan', loanColumns, 'lent_on', 'lentOn'),
  losses: ofItem('ItemLoss', 'item_loss', lossColumns, 'missed_on', 'missedOn'),
};
