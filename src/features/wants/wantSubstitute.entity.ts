import { Entity, Index } from 'typeorm';
import { ReferenceColumn } from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';

/** A part type that will do instead of what is wanted. */
@Entity({ name: 'want_substitute' })
@Index(['wantId', 'partTypeId'], { unique: true })
export class WantSubstituteEntity extends KeptRow {
  @ReferenceColumn('want')
  wantId!: string;

  @ReferenceColumn('part_type')
  partTypeId!: string;
}
