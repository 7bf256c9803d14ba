import { Check, Entity, Index } from 'typeorm';
import { CountColumn, LargeCountColumn, ReferenceColumn, WordColumn } from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';

/** One thing in a lot: an item, or sundries in words ("box of knobs"). */
@Entity({ name: 'lot_line' })
@Index(['itemId'], { unique: true, where: 'item_id IS NOT NULL' })
@Check('line_is_something', 'item_id IS NOT NULL OR sundries IS NOT NULL')
export class LotLineEntity extends KeptRow {
  @ReferenceColumn('acquisition')
  acquisitionId!: string;

  @CountColumn()
  ordinal!: number;

  @ReferenceColumn('item', { nullable: true })
  itemId!: string | null;

  @WordColumn({ nullable: true })
  sundries!: string | null;

  /** Exact decimal, when the lot is spread by stated shares. */
  @WordColumn({ length: 40, nullable: true })
  statedShare!: string | null;

  /** In the lot's currency, when the lot is spread by stated values. */
  @LargeCountColumn({ nullable: true })
  statedValueMinorUnits!: number | null;
}
