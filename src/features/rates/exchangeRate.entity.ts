import { Entity, Index } from 'typeorm';
import { InstantColumn, LocalDateColumn, TextColumn, WordColumn } from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';

/** What one unit of a currency was in another on a day, by somebody. */
@Entity({ name: 'exchange_rate' })
@Index(['fromCurrency', 'toCurrency', 'ratedOn'], { unique: true })
export class ExchangeRateEntity extends KeptRow {
  @WordColumn({ length: 3 })
  fromCurrency!: string;

  @WordColumn({ length: 3 })
  toCurrency!: string;

  @LocalDateColumn()
  ratedOn!: string;

  /** Units of `toCurrency` for one of `fromCurrency`, an exact decimal above zero. */
  @TextColumn()
  rate!: string;

  @WordColumn()
  source!: string;

  /** Written down by mistake: kept, and no longer used. */
  @InstantColumn({ nullable: true })
  struckAt!: string | null;
}
