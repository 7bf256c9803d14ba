import { Entity } from 'typeorm';
import {
  InstantColumn,
  LocalDateColumn,
  ReferenceColumn,
  TextColumn,
  WordColumn,
} from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';

/** A set of a model, here or elsewhere, whose serial number and date of making are both known. */
@Entity({ name: 'dated_serial' })
export class DatedSerialEntity extends KeptRow {
  @ReferenceColumn('model')
  modelId!: string;

  @WordColumn()
  serialNumber!: string;

  /** As written (EDTF, ISO 8601-2). */
  @WordColumn({ length: 80 })
  dateEdtf!: string;

  @LocalDateColumn({ nullable: true })
  earliestOn!: string | null;

  @LocalDateColumn({ nullable: true })
  latestOn!: string | null;

  @TextColumn()
  source!: string;

  @InstantColumn({ nullable: true })
  withdrawnAt!: string | null;
}
