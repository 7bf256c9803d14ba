import { Entity, Index } from 'typeorm';
import {
  InstantColumn,
  JsonColumn,
  ReferenceColumn,
  TextColumn,
  WordColumn,
} from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';
import type { ReadingTier } from '../readings/readingTier.js';
import type { SweepColumn } from './sweepColumn.js';

/** What is read in which positions of a model, and how, under a name. */
@Entity({ name: 'sweep_template' })
@Index(['modelId', 'nameKey'], { unique: true })
export class SweepTemplateEntity extends KeptRow {
  @ReferenceColumn('model')
  modelId!: string;

  @WordColumn()
  name!: string;

  /** By which two names are the same; small letters of some alphabets take more room. */
  @WordColumn({ length: 600 })
  nameKey!: string;

  /** As the fit-out of the model spells them, in the order of reading. */
  @JsonColumn()
  designators!: string[];

  @JsonColumn()
  quantities!: SweepColumn[];

  @WordColumn({ length: 20 })
  tier!: ReadingTier;

  @WordColumn({ nullable: true })
  instrument!: string | null;

  @WordColumn({ nullable: true })
  method!: string | null;

  @TextColumn({ nullable: true })
  note!: string | null;

  @InstantColumn({ nullable: true })
  retiredAt!: string | null;
}
