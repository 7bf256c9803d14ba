import { Entity, Index } from 'typeorm';
import {
  CountColumn,
  FlagColumn,
  ReferenceColumn,
  TextColumn,
  WordColumn,
} from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';
import type { Zone } from '../inspections/zone.js';

/** A place in a complete set, and the part type expected in it. */
@Entity({ name: 'fit_out_position' })
@Index(['modelId', 'designator'], { unique: true })
export class FitOutPositionEntity extends KeptRow {
  @ReferenceColumn('model')
  modelId!: string;

  /** As on the circuit diagram, or in words: `V1`, `C12`, `bottom cover`. */
  @WordColumn({ length: 60 })
  designator!: string;

  @WordColumn({ length: 30 })
  zone!: Zone;

  @ReferenceColumn('part_type', { nullable: true })
  partTypeId!: string | null;

  @FlagColumn()
  isRequired!: boolean;

  @CountColumn()
  ordinal!: number;

  /** How much it counts in the originality of a set; null: 1. */
  @CountColumn({ nullable: true })
  weight?: number | null;

  @TextColumn({ nullable: true })
  note!: string | null;
}
