import { Entity } from 'typeorm';
import {
  LargeCountColumn,
  LocalDateColumn,
  ReferenceColumn,
  TextColumn,
  WordColumn,
} from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';

/** Money spent on an item, within one of its projects or not. */
@Entity({ name: 'expense' })
export class ExpenseEntity extends KeptRow {
  @ReferenceColumn('item')
  itemId!: string;

  @ReferenceColumn('project', { nullable: true })
  projectId!: string | null;

  @LocalDateColumn()
  spentOn!: string;

  @LargeCountColumn()
  amountMinorUnits!: number;

  @WordColumn({ length: 3 })
  currency!: string;

  @WordColumn()
  description!: string;

  @ReferenceColumn('party', { nullable: true })
  paidToId!: string | null;

  @TextColumn({ nullable: true })
  note!: string | null;
}
