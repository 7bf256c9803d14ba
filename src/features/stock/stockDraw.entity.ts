import { Check, Entity } from 'typeorm';
import {
  CountColumn,
  InstantColumn,
  ReferenceColumn,
  TextColumn,
  WordColumn,
} from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';
import type { DrawReason } from './drawReason.js';

/** Units that left a lot. */
@Entity({ name: 'stock_draw' })
@Check('stock_draw_counts', 'quantity >= 0')
export class StockDrawEntity extends KeptRow {
  @ReferenceColumn('stock_lot')
  lotId!: string;

  /** Zero after a correction: it did not happen. */
  @CountColumn()
  quantity!: number;

  @WordColumn({ length: 20 })
  reason!: DrawReason;

  @InstantColumn()
  drawnAt!: string;

  @ReferenceColumn('task', { nullable: true })
  taskId!: string | null;

  /** The reservation that it was taken from. */
  @ReferenceColumn('stock_reservation', { nullable: true })
  reservationId!: string | null;

  @ReferenceColumn('fitting', { nullable: true })
  fittingId!: string | null;

  @TextColumn({ nullable: true })
  note!: string | null;
}
