import { Entity, Index } from 'typeorm';
import {
  InstantColumn,
  JsonColumn,
  ReferenceColumn,
  TextColumn,
  WordColumn,
} from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';
import type { BringUpStatus } from './bringUpStatus.js';
import type { Procedure } from './procedureShape.js';

/** A bring-up procedure carried out on an item. */
@Entity({ name: 'bring_up' })
export class BringUpEntity extends KeptRow {
  /** Of the sender's own: sending it twice starts it once. */
  @Index({ unique: true })
  @WordColumn({ length: 100 })
  key!: string;

  /** SHA-256 of what was sent under the key. */
  @WordColumn({ length: 64 })
  digest!: string;

  @ReferenceColumn('item')
  itemId!: string;

  /** As it read when the run began: editing the file changes no run. */
  @JsonColumn()
  procedure!: Procedure;

  @WordColumn({ length: 20 })
  status!: BringUpStatus;

  @InstantColumn()
  startedAt!: string;

  @InstantColumn({ nullable: true })
  endedAt!: string | null;

  @ReferenceColumn('party', { nullable: true })
  startedById!: string | null;

  @ReferenceColumn('final_check', { nullable: true })
  finalCheckId!: string | null;

  /** Why it stopped or was given up; null otherwise. */
  @TextColumn({ nullable: true })
  reason!: string | null;

  @TextColumn({ nullable: true })
  note!: string | null;
}
