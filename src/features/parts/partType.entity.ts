import { Entity, Index } from 'typeorm';
import { InstantColumn, JsonColumn, TextColumn, WordColumn } from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';
import type { TubeClass } from '../../domain/parts/tubeClass.js';
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

  /** Of a tube, by the collector's own source: basing code and class; missing: not written down. */
  @WordColumn({ length: 10, nullable: true })
  tubeBase?: string | null;

  @WordColumn({ length: 30, nullable: true })
  tubeClass?: TubeClass | null;

  @TextColumn({ nullable: true })
  tubeSource?: string | null;

  @InstantColumn({ nullable: true })
  retiredAt!: string | null;
}
