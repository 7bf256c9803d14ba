import { list, one } from '../../api/kit/relations.js';
import { selectColumns } from '../../api/kit/selectColumns.js';
import { tableReads } from '../../api/kit/tableReads.js';
import { stockDrawColumns } from './stockDraw.reads.js';
import { stockLevels } from './stockLevels.js';
import { costOfLot } from './stockCosts.reads.js';
import { stockReservationColumns } from './stockReservation.reads.js';

const names = [
  'id',
  'version',
  'partTypeId',
  'description',
  'componentId',
  'placeId',
  'condition',
  'quantity',
  'receivedOn',
  'lotLineId',
  'note',
];

const columns = `${selectColumns('stock_lot', names)},
  ${stockLevels.drawn} AS "drawnQuantity", ${stockLevels.reserved} AS "reservedQuantity",
  ${stockLevels.onHand} AS "onHandQuantity", ${stockLevels.available} AS "availableQuantity"`;

export const stockLotReads = tableReads('StockLot', 'stock_lot', columns, {
  partType: one('PartType', 'partTypeId'),
  component: one('Component', 'componentId'),
  place: one('Place', 'placeId'),
  lotLine: one('LotLine', 'lotLineId'),
  cost: costOfLot,
  reservations: list('StockReservation', {
    table: 'stock_reservation',
    columns: stockReservationColumns,
    parentColumn: 'lot_id',
    orderBy: 'stock_reservation.id',
  }),
  draws: list('StockDraw', {
    table: 'stock_draw',
    columns: stockDrawColumns,
    parentColumn: 'lot_id',
    orderBy: 'stock_draw.id',
  }),
});

export const stockLotColumns = columns;
