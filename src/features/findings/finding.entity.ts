import { Entity } from 'typeorm';
import { InstantColumn, ReferenceColumn, TextColumn, WordColumn } from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';
import type { Zone } from '../inspections/zone.js';
import type { FindingSeverity } from './findingSeverity.js';
import type { FindingStatus } from './findingStatus.js';

/** Something seen at an inspection, or at the bench. */
@Entity({ name: 'finding' })
export class FindingEntity extends KeptRow {
  @ReferenceColumn('item')
  itemId!: string;

  @ReferenceColumn('inspection', { nullable: true })
  inspectionId!: string | null;

  @WordColumn({ length: 30 })
  zone!: Zone;

  @WordColumn({ length: 20 })
  severity!: FindingSeverity;

  @TextColumn()
  note!: string;

  @InstantColumn()
  seenAt!: string;

  @WordColumn({ length: 20 })
  status!: FindingStatus;

  @InstantColumn({ nullable: true })
  settledAt!: string | null;

  @TextColumn({ nullable: true })
  settledNote!: string | null;
}
