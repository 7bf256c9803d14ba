import { Check, Entity } from 'typeorm';
import { InstantColumn, ReferenceColumn, TextColumn, WordColumn } from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';
import type { ReadingTier } from './readingTier.js';

/** A measured quantity. Its verdict is computed from limits, never kept. */
@Entity({ name: 'reading' })
@Check('reading_of_one', '(component_id IS NULL) <> (item_id IS NULL)')
export class ReadingEntity extends KeptRow {
  @ReferenceColumn('component', { nullable: true })
  componentId!: string | null;

  @ReferenceColumn('item', { nullable: true })
  itemId!: string | null;

  @WordColumn({ length: 80 })
  quantity!: string;

  /** Exact decimal in `unit`, as it was read. */
  @TextColumn()
  value!: string;

  /** UCUM. */
  @WordColumn({ length: 40 })
  unit!: string;

  @WordColumn({ length: 20 })
  tier!: ReadingTier;

  @WordColumn({ nullable: true })
  instrument!: string | null;

  @WordColumn({ nullable: true })
  method!: string | null;

  @InstantColumn()
  takenAt!: string;

  @ReferenceColumn('party', { nullable: true })
  takenById!: string | null;

  @TextColumn({ nullable: true })
  note!: string | null;
}
