import { Entity } from 'typeorm';
import { InstantColumn, ReferenceColumn, TextColumn } from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';

/** What a rule asks for has been done. */
@Entity({ name: 'maintenance_done' })
export class MaintenanceDoneEntity extends KeptRow {
  @ReferenceColumn('maintenance_rule')
  ruleId!: string;

  @InstantColumn()
  doneAt!: string;

  @ReferenceColumn('party', { nullable: true })
  doneById!: string | null;

  /** Since when it counts for nothing: it was written down by mistake. */
  @InstantColumn({ nullable: true })
  withdrawnAt!: string | null;

  @TextColumn({ nullable: true })
  note!: string | null;
}
