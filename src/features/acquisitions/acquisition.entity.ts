import { Entity } from 'typeorm';
import {
  LargeCountColumn,
  LocalDateColumn,
  ReferenceColumn,
  TextColumn,
  WordColumn,
} from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';
import type { SpreadMethod } from './spreadMethod.js';

/** A lot that came in: several things at one price. What falls to each item is computed. */
@Entity({ name: 'acquisition' })
export class AcquisitionEntity extends KeptRow {
  @LocalDateColumn()
  acquiredOn!: string;

  @ReferenceColumn('party', { nullable: true })
  otherPartyId!: string | null;

  /** The fair, auction or house, in words. */
  @WordColumn({ nullable: true })
  venue!: string | null;

  @LargeCountColumn()
  priceMinorUnits!: number;

  @WordColumn({ length: 3 })
  currency!: string;

  @WordColumn({ length: 20 })
  spreadMethod!: SpreadMethod;

  @TextColumn({ nullable: true })
  note!: string | null;
}
