import { Entity, PrimaryColumn } from 'typeorm';
import { InstantColumn, JsonColumn, WordColumn } from '../../db/columns.js';
import { safeInteger } from '../../db/safeInteger.js';
import type { RecordChange } from './recordChange.js';

/** One record that a unit of work wrote. */
export interface TouchedRecord {
  table: string;
  id: string;
  change: RecordChange;
  /** RIG or ACCESSORY where the record is an item. */
  itemKind?: string;
}

/**
 * What one unit of work changed, numbered in the order of the commits. It tells open windows what
 * to load anew; the history, which is kept for ever, says what it was.
 */
@Entity({ name: 'change_event' })
export class ChangeEventEntity {
  @PrimaryColumn({ type: 'bigint', transformer: safeInteger })
  sequence!: number;

  @InstantColumn()
  at!: string;

  @WordColumn({ length: 60 })
  action!: string;

  @WordColumn({ length: 36, nullable: true })
  actorId!: string | null;

  /** Null: more than is worth naming. */
  @JsonColumn({ nullable: true })
  records!: TouchedRecord[] | null;

  /** Items whose computed figures were computed anew; null as above. */
  @JsonColumn({ nullable: true })
  itemIds!: string[] | null;
}
