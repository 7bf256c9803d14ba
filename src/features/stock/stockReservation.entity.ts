import { Check, Entity } from 'typeorm';
import { CountColumn, InstantColumn, ReferenceColumn, TextColumn } from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';

/** Units of a lot that are put aside for a task, until they are drawn or released. */
@Entity({ name: 'stock_reservation' })
@Check('stock_reservation_counts', 'quantity >= 1')
export class StockReservationEntity extends KeptRow {
  @ReferenceColumn('stock_lot')
  lotId!: string;

  @ReferenceColumn('task')
  taskId!: string;

  @CountColumn()
  quantity!: number;

  @InstantColumn()
  reservedAt!: string;

  /** From when what was not drawn is free again. */
  @InstantColumn({ nullable: true })
  releasedAt!: string | null;

  @TextColumn({ nullable: true })
  note!: string | null;
}
