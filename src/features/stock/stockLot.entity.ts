import { Check, Entity } from 'typeorm';
import {
  CountColumn,
  LargeCountColumn,
  LocalDateColumn,
  ReferenceColumn,
  TextColumn,
  WordColumn,
} from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';
import type { StockCondition } from './stockCondition.js';

/** Spares that came to the shelf together. What is left of them is computed from what left. */
@Entity({ name: 'stock_lot' })
@Check('stock_lot_counts', 'quantity >= 0')
@Check('stock_lot_cost', '(cost_minor_units IS NULL) = (currency IS NULL)')
export class StockLotEntity extends KeptRow {
  @ReferenceColumn('part_type', { nullable: true })
  partTypeId!: string | null;

  /** What it is, where there is no part type. */
  @WordColumn({ nullable: true })
  description!: string | null;

  /** A known component that came out of a set to the shelf: a lot of one. */
  @ReferenceColumn('component', { nullable: true })
  componentId!: string | null;

  @ReferenceColumn('place', { nullable: true })
  placeId!: string | null;

  @WordColumn({ length: 20 })
  condition!: StockCondition;

  /** How many came. */
  @CountColumn()
  quantity!: number;

  @LocalDateColumn()
  receivedOn!: string;

  /** The line of the lot bought, whose share is then what this cost. */
  @ReferenceColumn('lot_line', { nullable: true })
  lotLineId!: string | null;

  /** What all of it cost, where no line of a lot says so. */
  @LargeCountColumn({ nullable: true })
  costMinorUnits!: number | null;

  @WordColumn({ length: 3, nullable: true })
  currency!: string | null;

  @TextColumn({ nullable: true })
  note!: string | null;
}
