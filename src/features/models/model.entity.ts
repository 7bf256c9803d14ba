import { Entity, Index } from 'typeorm';
import { CountColumn, InstantColumn, TextColumn, WordColumn } from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';
import type { ItemKind } from '../items/itemKind.js';

/** What a make and type should be. */
@Entity({ name: 'model' })
@Index(['maker', 'designation'], { unique: true })
export class ModelEntity extends KeptRow {
  @WordColumn({ length: 20 })
  itemKind!: ItemKind;

  @WordColumn()
  maker!: string;

  @WordColumn()
  designation!: string;

  /** What it is in a few words: "80–10 m SSB transceiver". */
  @TextColumn({ nullable: true })
  description!: string | null;

  @CountColumn({ nullable: true })
  firstYearMade!: number | null;

  @CountColumn({ nullable: true })
  lastYearMade!: number | null;

  @TextColumn({ nullable: true })
  note!: string | null;

  @InstantColumn({ nullable: true })
  retiredAt!: string | null;
}
