import { Entity } from 'typeorm';
import { LocalDateColumn, ReferenceColumn, TextColumn } from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';

/** What somebody said about an item. A claim, not a fact. */
@Entity({ name: 'claim' })
export class ClaimEntity extends KeptRow {
  @ReferenceColumn('item', { nullable: true })
  itemId!: string | null;

  @ReferenceColumn('acquisition', { nullable: true })
  acquisitionId!: string | null;

  @ReferenceColumn('party', { nullable: true })
  saidById!: string | null;

  @LocalDateColumn({ nullable: true })
  saidOn!: string | null;

  @TextColumn()
  statement!: string;
}
