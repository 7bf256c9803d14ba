import { Entity } from 'typeorm';
import { InstantColumn, ReferenceColumn, TextColumn, WordColumn } from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';

/** Where things stand: a room, a shelf in it, a box on the shelf. */
@Entity({ name: 'place' })
export class PlaceEntity extends KeptRow {
  @WordColumn()
  name!: string;

  @ReferenceColumn('place', { nullable: true })
  withinId!: string | null;

  @TextColumn({ nullable: true })
  note!: string | null;

  @InstantColumn({ nullable: true })
  retiredAt!: string | null;
}
