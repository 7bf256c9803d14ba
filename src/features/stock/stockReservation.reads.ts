import { list, one } from '../../api/kit/relations.js';
import { selectColumns } from '../../api/kit/selectColumns.js';
import { tableReads } from '../../api/kit/tableReads.js';
import { stockLevels } from './stockLevels.js';

const names = ['id', 'version', 'lotId', 'taskId', 'quantity', 'reservedAt', 'releasedAt', 'note'];

export const stockReservationColumns = `${selectColumns('stock_reservation', names)},
  ${stockLevels.openOfReservation} AS "openQuantity"`;

export const stockReservationReads = tableReads(
  'StockReservation',
  'stock_reservation',
  stockReservationColumns,
  { lot: one('StockLot', 'lotId'), task: one('Task', 'taskId') },
);

/** What stock adds to a task. */
export const stockRelationsOfTask = {
  reservations: list('StockReservation', {
    table: 'stock_reservation',
    columns: stockReservationColumns,
    parentColumn: 'task_id',
    orderBy: 'stock_reservation.id',
  }),
};
