import { Entity, PrimaryColumn } from 'typeorm';
import { CountColumn } from '../db/columns.js';

/** By which version of the computation what is computed of the items was last computed. */
@Entity({ name: 'computed_version' })
export class ComputedVersionEntity {
  @PrimaryColumn({ type: 'varchar', length: 20 })
  subject!: string;

  @CountColumn()
  version!: number;
}
