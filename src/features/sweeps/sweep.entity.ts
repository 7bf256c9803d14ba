import { Entity, Index } from 'typeorm';
import { JsonColumn, ReferenceColumn, WordColumn } from '../../db/columns.js';
import type { Refused } from '../../db/refusal.js';
import { KeptRow } from '../../db/keptRow.js';

/** What became of one row of a sweep. */
export interface SweptRow {
  designator: string;
  componentId: string | null;
  readingIds: string[];
  /** Why no reading of it was kept; empty when they were. */
  problems: Refused[];
}

/** Readings of many positions taken in one go, kept under a key so that a repeat changes nothing. */
@Entity({ name: 'sweep' })
export class SweepEntity extends KeptRow {
  /** Chosen by whoever sends it. */
  @Index({ unique: true })
  @WordColumn({ length: 100 })
  key!: string;

  /** SHA-256 of what was sent under the key. */
  @WordColumn({ length: 64 })
  digest!: string;

  @ReferenceColumn('item')
  itemId!: string;

  @ReferenceColumn('sweep_template', { nullable: true })
  templateId!: string | null;

  /** The positions that the template named when it was used. */
  @JsonColumn({ nullable: true })
  plannedDesignators!: string[] | null;

  @JsonColumn()
  rows!: SweptRow[];
}
