import { Column, Entity, Index } from 'typeorm';
import {
  CountColumn,
  InstantColumn,
  ReferenceColumn,
  TextColumn,
  WordColumn,
} from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';

/** A stored file shown with a record of any kind. */
@Entity({ name: 'attachment' })
export class AttachmentEntity extends KeptRow {
  @ReferenceColumn('stored_file')
  fileId!: string;

  /** Name of the record's type in the schema: `Finding`, and `Item` for rigs and accessories. */
  @WordColumn({ length: 40 })
  subjectType!: string;

  @Column({ type: 'varchar', length: 36 })
  @Index()
  subjectId!: string;

  @WordColumn({ length: 20 })
  role!: string;

  @TextColumn({ nullable: true })
  caption!: string | null;

  /** What an AFTER is to be seen beside. */
  @ReferenceColumn('attachment', { nullable: true })
  beforeId!: string | null;

  /** Place among the attachments of the record; equal ones in the order in which they came. */
  @CountColumn()
  ordinal!: number;

  @InstantColumn({ nullable: true })
  detachedAt!: string | null;
}
