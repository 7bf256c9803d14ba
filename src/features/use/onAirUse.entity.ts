import { Entity, Index } from 'typeorm';
import {
  CountColumn,
  InstantColumn,
  JsonColumn,
  ReferenceColumn,
  TextColumn,
  WordColumn,
} from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';

/** A rig was in use on the air, or an accessory served it then. */
@Entity({ name: 'on_air_use' })
@Index('on_air_use_item_start', ['itemId', 'startedAt'])
export class OnAirUseEntity extends KeptRow {
  @ReferenceColumn('item')
  itemId!: string;

  /** Of an accessory: the use of the rig that it served. Null for a rig. */
  @ReferenceColumn('on_air_use', { nullable: true })
  rigUseId!: string | null;

  @InstantColumn()
  startedAt!: string;

  @CountColumn()
  minutes!: number;

  @CountColumn()
  contacts!: number;

  @WordColumn({ length: 10, nullable: true })
  band!: string | null;

  @WordColumn({ length: 20, nullable: true })
  mode!: string | null;

  @ReferenceColumn('party', { nullable: true })
  operatorId!: string | null;

  @TextColumn({ nullable: true })
  note!: string | null;

  /** Of the contacts that were counted from logs, to know them again; null: written by hand. */
  @JsonColumn({ nullable: true })
  contactKeys!: string[] | null;
}
