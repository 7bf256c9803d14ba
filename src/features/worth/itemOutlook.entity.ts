import { Entity, ForeignKey, Index } from 'typeorm';
import { CountColumn, LargeCountColumn, TextColumn, WordColumn } from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';
import type { ConditionStandard } from './conditionStandard.js';

/** What the owner alone can say of an item's worth; one row an item at most. */
@Entity({ name: 'item_outlook' })
export class ItemOutlookEntity extends KeptRow {
  @ForeignKey('item')
  @Index({ unique: true })
  @WordColumn({ length: 36 })
  itemId!: string;

  @WordColumn({ length: 20, nullable: true })
  presentStandard!: ConditionStandard | null;

  /** Chance in a hundred that finishing reaches the standard; null: nothing is said. */
  @CountColumn({ nullable: true })
  successPercent!: number | null;

  /** What saving it is worth to the owner beyond its price. */
  @LargeCountColumn({ nullable: true })
  premiumMinorUnits!: number | null;

  @WordColumn({ length: 3, nullable: true })
  premiumCurrency!: string | null;

  @TextColumn({ nullable: true })
  premiumReason!: string | null;
}
