import { Check, Entity } from 'typeorm';
import {
  CountColumn,
  InstantColumn,
  LargeCountColumn,
  ReferenceColumn,
  TextColumn,
  WordColumn,
} from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';

/** What is looked for, for which set or task, and up to what price. */
@Entity({ name: 'want' })
@Check('want_counts', 'quantity >= 1')
@Check('want_ceiling', '(ceiling_minor_units IS NULL) = (ceiling_currency IS NULL)')
export class WantEntity extends KeptRow {
  @ReferenceColumn('part_type', { nullable: true })
  partTypeId!: string | null;

  @WordColumn({ nullable: true })
  description!: string | null;

  @ReferenceColumn('item', { nullable: true })
  itemId!: string | null;

  /** The place in the item that it is for. */
  @WordColumn({ length: 60, nullable: true })
  designator!: string | null;

  @ReferenceColumn('task', { nullable: true })
  taskId!: string | null;

  @CountColumn()
  quantity!: number;

  /** For one. */
  @LargeCountColumn({ nullable: true })
  ceilingMinorUnits!: number | null;

  @WordColumn({ length: 3, nullable: true })
  ceilingCurrency!: string | null;

  @InstantColumn({ nullable: true })
  droppedAt!: string | null;

  @TextColumn({ nullable: true })
  note!: string | null;
}
