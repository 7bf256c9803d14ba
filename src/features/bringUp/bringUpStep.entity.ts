import { Entity, Index } from 'typeorm';
import {
  InstantColumn,
  JsonColumn,
  ReferenceColumn,
  TextColumn,
  WordColumn,
} from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';
import type { StepVersion } from './stepVersion.js';

/** One step of a bring-up as it was done; of several times the latest counts. */
@Entity({ name: 'bring_up_step' })
export class BringUpStepEntity extends KeptRow {
  @Index({ unique: true })
  @WordColumn({ length: 100 })
  key!: string;

  @WordColumn({ length: 64 })
  digest!: string;

  @ReferenceColumn('bring_up')
  bringUpId!: string;

  @WordColumn({ length: 60 })
  stepKey!: string;

  /** Whether each statement held, in the procedure's order. */
  @JsonColumn()
  holds!: boolean[];

  /** The readings that were kept for it. */
  @JsonColumn()
  readingIds!: string[];

  @InstantColumn()
  doneAt!: string;

  @ReferenceColumn('party', { nullable: true })
  doneById!: string | null;

  /** The finding that a failed gate opened. */
  @ReferenceColumn('finding', { nullable: true })
  findingId!: string | null;

  @TextColumn({ nullable: true })
  note!: string | null;

  /** What it said before it was put right, oldest first; null if it never was. */
  @JsonColumn({ nullable: true })
  earlierVersions!: StepVersion[] | null;

  /** When it was taken back: it was never done. Null while it counts. */
  @InstantColumn({ nullable: true })
  withdrawnAt!: string | null;
}
