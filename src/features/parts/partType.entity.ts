import { Entity, Index } from 'typeorm';
import { InstantColumn, JsonColumn, TextColumn, WordColumn } from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';
import type { PartKind } from './partKind.js';

/** A kind of part with its ratings. */
@Entity({ name: 'part_type' })
@Index(['kind', 'designation'], { unique: true })
export class PartTypeEntity extends KeptRow {
  @WordColumn({ length: 20 })
  kind!: PartKind;

  @WordColumn()
  designation!: string;

  @TextColumn({ nullable: true })
  description!: string | null;

  /** Rating name with unit → exact decimal, with the source beside it. */
  @JsonColumn()
  ratings!: { name: string; value: string; unit: string; source: string | null }[];

  @InstantColumn({ nullable: true })
  retiredAt!: string | null;
}
