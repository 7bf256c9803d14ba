import { Entity, Index } from 'typeorm';
import { InstantColumn, ReferenceColumn, TextColumn, WordColumn } from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';
import type { Disposition } from './disposition.js';

/** A component sat in a position of an item from one instant until another. */
@Entity({ name: 'fitting' })
@Index('fitting_one_place', ['componentId'], { unique: true, where: 'removed_at IS NULL' })
@Index('fitting_one_part', ['itemId', 'designator'], { unique: true, where: 'removed_at IS NULL' })
export class FittingEntity extends KeptRow {
  @ReferenceColumn('component')
  componentId!: string;

  @ReferenceColumn('item')
  itemId!: string;

  @WordColumn({ length: 60 })
  designator!: string;

  @InstantColumn()
  fittedAt!: string;

  @InstantColumn({ nullable: true })
  removedAt!: string | null;

  /** Where the removed part went. */
  @WordColumn({ length: 20, nullable: true })
  disposition!: Disposition | null;

  @TextColumn({ nullable: true })
  note!: string | null;
}
