import { Entity, Index } from 'typeorm';
import { InstantColumn, ReferenceColumn, TextColumn, WordColumn } from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';
import type { AccessoryRole } from './accessoryRole.js';
import type { ItemKind } from './itemKind.js';

/** One physical thing: a rig, or an accessory that serves rigs. */
@Entity({ name: 'item' })
@Index(['kind', 'id'])
export class ItemEntity extends KeptRow {
  @WordColumn({ length: 20 })
  kind!: ItemKind;

  /** The collector's own number, unique in the collection: `R-007`. */
  @Index({ unique: true })
  @WordColumn({ length: 40 })
  inventoryNumber!: string;

  @WordColumn({ nullable: true })
  name!: string | null;

  @ReferenceColumn('model', { nullable: true })
  modelId!: string | null;

  /** What an accessory is for; null for a rig. */
  @WordColumn({ length: 20, nullable: true })
  role!: AccessoryRole | null;

  @WordColumn({ nullable: true })
  serialNumber!: string | null;

  /** An EDTF date of making, as uncertain as it is. */
  @WordColumn({ length: 80, nullable: true })
  madeEdtf!: string | null;

  @ReferenceColumn('place', { nullable: true })
  placeId!: string | null;

  /** The accessory in whose housing this one sits. */
  @ReferenceColumn('item', { nullable: true })
  housedInId!: string | null;

  @TextColumn({ nullable: true })
  note!: string | null;

  @InstantColumn({ nullable: true })
  retiredAt!: string | null;

  @TextColumn({ nullable: true })
  retiredReason!: string | null;
}
