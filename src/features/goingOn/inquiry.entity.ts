import { Entity } from 'typeorm';
import {
  CountColumn,
  InstantColumn,
  LargeCountColumn,
  ReferenceColumn,
  TextColumn,
  WordColumn,
} from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';
import type { InquiryKind } from './inquiryKind.js';
import type { Uncertainty } from './uncertainty.js';

/** A way to find out more before going on: a test, an inspection, a quotation. */
@Entity({ name: 'inquiry' })
export class InquiryEntity extends KeptRow {
  @ReferenceColumn('project')
  projectId!: string;

  @WordColumn({ length: 20 })
  kind!: InquiryKind;

  @WordColumn()
  description!: string;

  @WordColumn({ length: 20 })
  resolves!: Uncertainty;

  /** Which planned cost, where it resolves one. */
  @ReferenceColumn('planned_cost', { nullable: true })
  plannedCostId!: string | null;

  /** Which part's price, where it resolves one. */
  @ReferenceColumn('part_type', { nullable: true })
  partTypeId!: string | null;

  @LargeCountColumn()
  costMinorUnits!: number;

  @WordColumn({ length: 3 })
  costCurrency!: string;

  /** Own time that it takes. */
  @CountColumn()
  minutes!: number;

  @InstantColumn({ nullable: true })
  doneAt!: string | null;

  @TextColumn({ nullable: true })
  outcome!: string | null;

  @InstantColumn({ nullable: true })
  struckAt!: string | null;
}
