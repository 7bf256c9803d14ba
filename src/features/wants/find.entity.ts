import { Entity, Index } from 'typeorm';
import { ReferenceColumn, WordColumn } from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';

/** A purchase made on the spot, kept under a key so that sending it twice buys it once. */
@Entity({ name: 'find' })
export class FindEntity extends KeptRow {
  @Index({ unique: true })
  @WordColumn({ length: 100 })
  key!: string;

  /** SHA-256 of what was sent under the key. */
  @WordColumn({ length: 64 })
  digest!: string;

  @ReferenceColumn('want', { nullable: true })
  wantId!: string | null;

  @ReferenceColumn('acquisition')
  acquisitionId!: string;

  @ReferenceColumn('stock_lot')
  stockLotId!: string;
}
