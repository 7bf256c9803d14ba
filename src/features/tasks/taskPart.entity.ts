import { Entity, Index } from 'typeorm';
import { CountColumn, IdColumn, ReferenceColumn } from '../../db/columns.js';

/** A part that a task cannot be done without. */
@Entity({ name: 'task_part' })
@Index(['taskId', 'partTypeId'], { unique: true })
export class TaskPartEntity {
  @IdColumn()
  id!: string;

  @ReferenceColumn('task')
  taskId!: string;

  @ReferenceColumn('part_type')
  partTypeId!: string;

  @CountColumn()
  quantity!: number;
}
