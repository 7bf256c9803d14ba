import { Entity, Index } from 'typeorm';
import { LocalDateColumn, ReferenceColumn, TextColumn, WordColumn } from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';
import type { LoanDirection } from './lossKind.js';
import { ItemIdColumn } from './itemIdColumn.js';

/** An item is lent to or by somebody, until a day or until further notice. */
@Entity({ name: 'loan' })
@Index(['itemId'], { unique: true, where: 'returned_on IS NULL' })
export class LoanEntity extends KeptRow {
  @ItemIdColumn()
  itemId!: string;

  @WordColumn({ length: 10, default: 'OUT' })
  direction!: LoanDirection;

  /** The other party: who has it, or whose it is where it is lent to us. */
  @ReferenceColumn('party')
  borrowerId!: string;

  @LocalDateColumn()
  lentOn!: string;

  @LocalDateColumn({ nullable: true })
  dueOn!: string | null;

  @LocalDateColumn({ nullable: true })
  returnedOn!: string | null;

  @WordColumn({ nullable: true })
  placeName!: string | null;

  @TextColumn({ nullable: true })
  purpose!: string | null;

  @TextColumn({ nullable: true })
  note!: string | null;
}
