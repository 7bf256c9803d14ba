import { Entity } from 'typeorm';
import { CountColumn, IdColumn, LocalDateColumn, ReferenceColumn } from '../../db/columns.js';

/** A task in a kept plan: what it was to take and when it was to be done. Never changed. */
@Entity({ name: 'baseline_task' })
export class BaselineTaskEntity {
  @IdColumn()
  id!: string;

  @ReferenceColumn('baseline')
  baselineId!: string;

  @ReferenceColumn('task')
  taskId!: string;

  @CountColumn()
  ordinal!: number;

  @CountColumn()
  budgetMinutes!: number;

  @LocalDateColumn()
  plannedStartOn!: string;

  @LocalDateColumn()
  plannedFinishOn!: string;
}
