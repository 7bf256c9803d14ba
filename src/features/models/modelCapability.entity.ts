import { Entity, Index } from 'typeorm';
import { CountColumn, IdColumn, ReferenceColumn, WordColumn } from '../../db/columns.js';

/** One band and mode that a model works on, as made. */
@Entity({ name: 'model_capability' })
@Index(['modelId', 'band', 'mode'], { unique: true })
export class ModelCapabilityEntity {
  @IdColumn()
  id!: string;

  @ReferenceColumn('model')
  modelId!: string;

  /** Wavelength name: `40m`. */
  @WordColumn({ length: 10 })
  band!: string;

  /** `CW`, `SSB`, `AM`, `RTTY` … */
  @WordColumn({ length: 20 })
  mode!: string;

  /** Null for a receiver, or where nobody has written it down. */
  @CountColumn({ nullable: true })
  outputMilliwatts!: number | null;
}
