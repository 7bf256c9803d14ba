import { Entity, Index } from 'typeorm';
import { LargeCountColumn, WordColumn } from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';
import type { CeilingPeriod } from './ceilingPeriod.js';

/** The most that the owner means to spend in any month, or in any year. */
@Entity({ name: 'spending_ceiling' })
export class SpendingCeilingEntity extends KeptRow {
  @Index({ unique: true })
  @WordColumn({ length: 10 })
  period!: CeilingPeriod;

  /** null: there is none any more. */
  @LargeCountColumn({ nullable: true })
  amountMinorUnits!: number | null;

  @WordColumn({ length: 3 })
  currency!: string;
}
