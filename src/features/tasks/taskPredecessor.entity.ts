import { Entity, Index } from 'typeorm';
import { IdColumn, ReferenceColumn } from '../../db/columns.js';

/** A task waits for another. */
@Entity({ name: 'task_predecessor' })
@Index(['taskId', 'predecessorId'], { unique: true })
export class TaskPredecessorEntity {
  @IdColumn()
  id!: string;

  @ReferenceColumn('task')
  taskId!: string;

  @ReferenceColumn('task')
  predecessorId!: string;
}
