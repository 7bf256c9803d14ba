import { queryInWork } from '../../db/queryInWork.js';
import type { SqlValue } from '../../db/reader.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { stockLevels } from './stockLevels.js';

/** A lot with what is left of it, as a unit of work sees it. */
export interface LotLevel {
  lotId: string;
  name: string;
  partTypeId: string | null;
  componentId: string | null;
  quantity: number;
  drawn: number;
  reserved: number;
  available: number;
}

/** Lots that a condition over `stock_lot` picks, the oldest first: first in, first out. */
export async function readLotLevels(
  work: UnitOfWork,
  condition: string,
  parameters: readonly SqlValue[],
): Promise<LotLevel[]> {
  return queryInWork<LotLevel>(
    work,
    `SELECT stock_lot.id AS "lotId", stock_lot.part_type_id AS "partTypeId",
       stock_lot.component_id AS "componentId", stock_lot.quantity AS "quantity",
       COALESCE(part_type.designation, stock_lot.description, 'this part') AS "name",
       ${stockLevels.drawn} AS "drawn", ${stockLevels.reserved} AS "reserved",
       ${stockLevels.available} AS "available"
     FROM stock_lot LEFT JOIN part_type ON part_type.id = stock_lot.part_type_id
     WHERE ${condition} ORDER BY stock_lot.received_on, stock_lot.id`,
    parameters,
  );
}

/** What a task has put aside and not drawn yet, the oldest lot first. */
export interface OpenReservation {
  reservationId: string;
  lotId: string;
  partTypeId: string | null;
  open: number;
}

export async function readOpenReservations(
  work: UnitOfWork,
  taskId: string,
): Promise<OpenReservation[]> {
  const reservations = await queryInWork<OpenReservation>(
    work,
    `SELECT stock_reservation.id AS "reservationId", stock_lot.id AS "lotId",
       stock_lot.part_type_id AS "partTypeId", ${stockLevels.openOfReservation} AS "open"
     FROM stock_reservation JOIN stock_lot ON stock_lot.id = stock_reservation.lot_id
     WHERE stock_reservation.task_id = ? AND stock_reservation.released_at IS NULL
     ORDER BY stock_lot.received_on, stock_lot.id, stock_reservation.id`,
    [taskId],
  );
  return reservations.filter(({ open }) => open > 0);
}
