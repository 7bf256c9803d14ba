import { Entity, Index, PrimaryColumn } from 'typeorm';
import { LargeCountColumn } from '../../db/columns.js';

/** What an item has cost so far in one currency. Computed, never typed in. */
@Entity({ name: 'item_cost' })
@Index(['currency', 'totalMinorUnits', 'itemId'])
export class ItemCostEntity {
  @PrimaryColumn({ type: 'varchar', length: 36 })
  itemId!: string;

  @PrimaryColumn({ type: 'varchar', length: 3 })
  currency!: string;

  @LargeCountColumn()
  priceMinorUnits!: number;

  @LargeCountColumn()
  extraMinorUnits!: number;

  @LargeCountColumn()
  expenseMinorUnits!: number;

  @LargeCountColumn()
  totalMinorUnits!: number;
}
