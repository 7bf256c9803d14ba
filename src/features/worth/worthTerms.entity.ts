import { Entity } from 'typeorm';
import { CountColumn, LargeCountColumn, WordColumn } from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';

/** What the owner reckons with throughout; one row, written the first time anything is said. */
@Entity({ name: 'worth_terms' })
export class WorthTermsEntity extends KeptRow {
  /** For an hour of the owner's own time; null: own time is not priced. */
  @LargeCountColumn({ nullable: true })
  hourRateMinorUnits!: number | null;

  @WordColumn({ length: 3, nullable: true })
  hourRateCurrency!: string | null;

  /** Of the price, that selling takes: fees, carriage, 0 to 100. */
  @CountColumn()
  saleCostPercent!: number;

  /** Own time to take out, test and sell one part. */
  @CountColumn()
  partEffortMinutes!: number;

  /** Share of fitted parts that prove fit to sell, 0 to 100. */
  @CountColumn()
  usablePartsPercent!: number;

  /** Chance that a spare kept would be needed, 0 to 100. */
  @CountColumn()
  spareUsePercent!: number;
}
