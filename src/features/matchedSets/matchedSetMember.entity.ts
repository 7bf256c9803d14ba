import { Entity, Index } from 'typeorm';
import { ReferenceColumn } from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';

/** A component belongs to a matched set. */
@Entity({ name: 'matched_set_member' })
@Index(['setId', 'componentId'], { unique: true })
export class MatchedSetMemberEntity extends KeptRow {
  @ReferenceColumn('matched_set')
  setId!: string;

  @ReferenceColumn('component')
  componentId!: string;
}
