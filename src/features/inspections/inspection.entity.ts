import { Entity } from 'typeorm';
import { InstantColumn, ReferenceColumn, TextColumn } from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';

/** A look over an item, zone by zone. */
@Entity({ name: 'inspection' })
export class InspectionEntity extends KeptRow {
  @ReferenceColumn('item')
  itemId!: string;

  @InstantColumn()
  inspectedAt!: string;

  @ReferenceColumn('party', { nullable: true })
  inspectorId!: string | null;

  @TextColumn({ nullable: true })
  note!: string | null;
}
