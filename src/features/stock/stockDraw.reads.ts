import { list, one } from '../../api/kit/relations.js';
import { selectColumns } from '../../api/kit/selectColumns.js';
import { tableReads } from '../../api/kit/tableReads.js';
import { costOfDraw } from './stockCosts.reads.js';

export const stockDrawColumns = selectColumns('stock_draw', [
  'id',
  'version',
  'lotId',
  'quantity',
  'reason',
  'drawnAt',
  'taskId',
  'reservationId',
  'fittingId',
  'note',
]);

export const stockDrawReads = tableReads('StockDraw', 'stock_draw', stockDrawColumns, {
  lot: one('StockLot', 'lotId'),
  task: one('Task', 'taskId'),
  reservation: one('StockReservation', 'reservationId'),
  fitting: one('Fitting', 'fittingId'),
  cost: costOfDraw,
});

/** What stock adds to a fitting: the lot that the part came from, if it came from one. */
export const stockRelationsOfFitting = {
  draws: list('StockDraw', {
    table: 'stock_draw',
    columns: stockDrawColumns,
    parentColumn: 'fitting_id',
    orderBy: 'stock_draw.id',
    where: 'stock_draw.quantity > 0',
  }),
};
