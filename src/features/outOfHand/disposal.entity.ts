import { Entity } from 'typeorm';
import {
  CountColumn,
  LargeCountColumn,
  LocalDateColumn,
  ReferenceColumn,
  TextColumn,
  WordColumn,
} from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';
import type { DisposalKind } from './lossKind.js';

/** A lot that went out: one item or several at one price. */
@Entity({ name: 'disposal' })
export class DisposalEntity extends KeptRow {
  @WordColumn({ length: 20 })
  kind!: DisposalKind;

  @LocalDateColumn()
  disposedOn!: string;

  @ReferenceColumn('party', { nullable: true })
  toPartyId!: string | null;

  @WordColumn({ nullable: true })
  venue!: string | null;

  @LargeCountColumn()
  priceMinorUnits!: number;

  @WordColumn({ length: 3 })
  currency!: string;

  @TextColumn({ nullable: true })
  note!: string | null;
}

/** One item in a lot that went out, with what fell to it of the price. */
@Entity({ name: 'disposal_line' })
export class DisposalLineEntity extends KeptRow {
  @ReferenceColumn('disposal')
  disposalId!: string;

  @CountColumn()
  ordinal!: number;

  @ReferenceColumn('item')
  itemId!: string;

  @LargeCountColumn()
  priceMinorUnits!: number;
}

/** What it cost to part with a lot: a commission, carriage. */
@Entity({ name: 'disposal_cost' })
export class DisposalCostEntity extends KeptRow {
  @ReferenceColumn('disposal')
  disposalId!: string;

  @WordColumn()
  description!: string;

  @LargeCountColumn()
  amountMinorUnits!: number;

  @WordColumn({ length: 3 })
  currency!: string;
}
