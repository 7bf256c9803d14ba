import { Entity } from 'typeorm';
import { CountColumn, InstantColumn, ReferenceColumn, WordColumn } from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';

/** A weighted step of a task. */
@Entity({ name: 'task_step' })
export class TaskStepEntity extends KeptRow {
  @ReferenceColumn('task')
  taskId!: string;

  @CountColumn()
  ordinal!: number;

  @WordColumn()
  title!: string;

  @CountColumn()
  weight!: number;

  @InstantColumn({ nullable: true })
  doneAt!: string | null;
}
