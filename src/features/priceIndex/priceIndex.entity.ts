import { Entity, Index } from 'typeorm';
import { InstantColumn, ReferenceColumn, TextColumn, WordColumn } from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';

/** A price index that the owner loaded, for amounts of one currency. */
@Entity({ name: 'price_index' })
export class PriceIndexEntity extends KeptRow {
  @WordColumn()
  name!: string;

  @WordColumn({ length: 3 })
  currency!: string;

  @WordColumn()
  source!: string;

  @InstantColumn({ nullable: true })
  struckAt!: string | null;
}

/** The index of one year (`2024`) or month (`2024-06`). */
@Entity({ name: 'price_index_point' })
@Index(['indexId', 'period'], { unique: true })
export class PriceIndexPointEntity extends KeptRow {
  @ReferenceColumn('price_index')
  indexId!: string;

  @WordColumn({ length: 7 })
  period!: string;

  /** An exact decimal above zero. */
  @TextColumn()
  value!: string;
}
