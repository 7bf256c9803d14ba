import { Entity } from 'typeorm';
import { InstantColumn, ReferenceColumn, TextColumn } from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';

/** An item went from one place to another. */
@Entity({ name: 'item_move' })
export class MoveEntity extends KeptRow {
  @ReferenceColumn('item')
  itemId!: string;

  @ReferenceColumn('place', { nullable: true })
  fromPlaceId!: string | null;

  @ReferenceColumn('place', { nullable: true })
  toPlaceId!: string | null;

  @InstantColumn()
  movedAt!: string;

  @TextColumn({ nullable: true })
  note!: string | null;
}
