import { Entity } from 'typeorm';
import {
  InstantColumn,
  LargeCountColumn,
  ReferenceColumn,
  TextColumn,
  WordColumn,
} from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';
import type { ConditionStandard } from '../worth/conditionStandard.js';
import type { PlannedCostKind } from './plannedCostKind.js';

/** Money that a project will take for something other than a part with a noted price. */
@Entity({ name: 'planned_cost' })
export class PlannedCostEntity extends KeptRow {
  @ReferenceColumn('project')
  projectId!: string;

  @WordColumn({ length: 20 })
  kind!: PlannedCostKind;

  @WordColumn()
  description!: string;

  @LargeCountColumn()
  optimisticMinorUnits!: number;

  @LargeCountColumn()
  likelyMinorUnits!: number;

  @LargeCountColumn()
  pessimisticMinorUnits!: number;

  @WordColumn({ length: 3 })
  currency!: string;

  /** The least standard that needs it; null: every standard does. */
  @WordColumn({ length: 20, nullable: true })
  neededFrom!: ConditionStandard | null;

  /** Since when it is spent or no longer needed. */
  @InstantColumn({ nullable: true })
  settledAt!: string | null;

  @TextColumn({ nullable: true })
  note!: string | null;
}
