import { Check, Entity } from 'typeorm';
import { ReferenceColumn, TextColumn, WordColumn } from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';
import type { ReadingTier } from './readingTier.js';

/** The range that readings of one quantity are held against, for a part type or for a model. */
@Entity({ name: 'reading_limit' })
@Check('limit_of_one', '(part_type_id IS NULL) <> (model_id IS NULL)')
export class LimitEntity extends KeptRow {
  @ReferenceColumn('part_type', { nullable: true })
  partTypeId!: string | null;

  @ReferenceColumn('model', { nullable: true })
  modelId!: string | null;

  /** Name of the quantity: `transconductance`, `leakage current`, `output power 40m CW`. */
  @WordColumn({ length: 80 })
  quantity!: string;

  /** Null: holds on the tester and in the circuit. */
  @WordColumn({ length: 20, nullable: true })
  tier!: ReadingTier | null;

  /** Exact decimal in `unit`. */
  @TextColumn({ nullable: true })
  lower!: string | null;

  @TextColumn({ nullable: true })
  upper!: string | null;

  /** UCUM. */
  @WordColumn({ length: 40 })
  unit!: string;

  /** Where the limit was published, or "common practice, no source". */
  @TextColumn({ nullable: true })
  source!: string | null;
}
