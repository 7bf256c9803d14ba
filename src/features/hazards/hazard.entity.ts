import { Entity } from 'typeorm';
import { InstantColumn, ReferenceColumn, TextColumn, WordColumn } from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';
import type { HazardKind } from './hazardKind.js';

/** Something in an item that can hurt; cleared only by a named check. */
@Entity({ name: 'hazard' })
export class HazardEntity extends KeptRow {
  @ReferenceColumn('item')
  itemId!: string;

  @ReferenceColumn('finding', { nullable: true })
  findingId!: string | null;

  @WordColumn({ length: 40 })
  kind!: HazardKind;

  @TextColumn({ nullable: true })
  note!: string | null;

  @InstantColumn()
  raisedAt!: string;

  @InstantColumn({ nullable: true })
  clearedAt!: string | null;

  /** The check that was done: "bleeder measured, 0.2 V across C1 after 60 s". */
  @TextColumn({ nullable: true })
  clearedByCheck!: string | null;

  @ReferenceColumn('party', { nullable: true })
  clearedById!: string | null;
}
