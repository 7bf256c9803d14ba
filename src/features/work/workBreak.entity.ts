import { Entity, Index } from 'typeorm';
import { InstantColumn, ReferenceColumn } from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';

/** Time within a session that was not work. */
@Entity({ name: 'work_break' })
@Index('break_one_open', ['sessionId'], { unique: true, where: 'ended_at IS NULL' })
export class WorkBreakEntity extends KeptRow {
  @ReferenceColumn('work_session')
  sessionId!: string;

  @InstantColumn()
  startedAt!: string;

  @InstantColumn({ nullable: true })
  endedAt!: string | null;
}
