import { Entity } from 'typeorm';
import { LargeCountColumn, ReferenceColumn, WordColumn } from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';

/** What a lot cost beside its price: carriage, buyer's premium, fuel, duty. */
@Entity({ name: 'extra_cost' })
export class ExtraCostEntity extends KeptRow {
  @ReferenceColumn('acquisition')
  acquisitionId!: string;

  @WordColumn()
  description!: string;

  @LargeCountColumn()
  amountMinorUnits!: number;

  @WordColumn({ length: 3 })
  currency!: string;
}
