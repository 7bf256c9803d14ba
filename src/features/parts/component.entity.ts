import { Entity } from 'typeorm';
import { ReferenceColumn, TextColumn, WordColumn } from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';
import type { ComponentOrigin } from './componentOrigin.js';

/** A physical part that sits, or has sat, in a position. */
@Entity({ name: 'component' })
export class ComponentEntity extends KeptRow {
  @ReferenceColumn('part_type', { nullable: true })
  partTypeId!: string | null;

  /** What is printed on it, or what it is when the part type is unknown. */
  @WordColumn({ nullable: true })
  marking!: string | null;

  @WordColumn({ length: 40, nullable: true })
  dateCode!: string | null;

  @WordColumn({ length: 20 })
  origin!: ComponentOrigin;

  @TextColumn({ nullable: true })
  note!: string | null;
}
