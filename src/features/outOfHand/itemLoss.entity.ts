import { Entity, Index } from 'typeorm';
import { LocalDateColumn, TextColumn, WordColumn } from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';
import { ItemIdColumn } from './itemIdColumn.js';
import type { LossKind } from './lossKind.js';

/** An item was stolen or cannot be found. */
@Entity({ name: 'item_loss' })
@Index(['itemId'], { unique: true, where: 'found_on IS NULL' })
export class ItemLossEntity extends KeptRow {
  @ItemIdColumn()
  itemId!: string;

  @WordColumn({ length: 20 })
  kind!: LossKind;

  @LocalDateColumn()
  missedOn!: string;

  @TextColumn({ nullable: true })
  circumstances!: string | null;

  @WordColumn({ nullable: true })
  reportedTo!: string | null;

  @WordColumn({ nullable: true })
  reportNumber!: string | null;

  @LocalDateColumn({ nullable: true })
  foundOn!: string | null;

  @TextColumn({ nullable: true })
  note!: string | null;
}
