import { Entity, Index } from 'typeorm';
import {
  FlagColumn,
  InstantColumn,
  ReferenceColumn,
  TextColumn,
  WordColumn,
} from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';
import type { AccessoryRole } from './accessoryRole.js';

/** An accessory serves a rig in a role, from one day until another. */
@Entity({ name: 'item_service' })
@Index(['accessoryId', 'rigId', 'role'], { unique: true, where: 'ended_at IS NULL' })
export class ServiceEntity extends KeptRow {
  @ReferenceColumn('item')
  accessoryId!: string;

  @ReferenceColumn('item')
  rigId!: string;

  @WordColumn({ length: 20 })
  role!: AccessoryRole;

  /** It serves this rig only, even while others could use it. */
  @FlagColumn()
  isExclusive!: boolean;

  @InstantColumn()
  startedAt!: string;

  @InstantColumn({ nullable: true })
  endedAt!: string | null;

  @TextColumn({ nullable: true })
  note!: string | null;
}
