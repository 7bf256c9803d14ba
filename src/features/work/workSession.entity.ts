import { Check, Entity, Index } from 'typeorm';
import { InstantColumn, ReferenceColumn, TextColumn, WordColumn } from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';

/** Time at the bench. A session without an end is the running timer. */
@Entity({ name: 'work_session' })
@Index('session_one_timer', ['personId'], { unique: true, where: 'ended_at IS NULL' })
@Index(['personId', 'startedAt'])
@Index(['itemId', 'startedAt'])
@Check('session_in_order', 'ended_at IS NULL OR ended_at >= started_at')
export class WorkSessionEntity extends KeptRow {
  @ReferenceColumn('party')
  personId!: string;

  @ReferenceColumn('item')
  itemId!: string;

  @ReferenceColumn('task', { nullable: true })
  taskId!: string | null;

  @InstantColumn()
  startedAt!: string;

  @InstantColumn({ nullable: true })
  endedAt!: string | null;

  /** IANA zone of the bench, for the day and month that the hours belong to. */
  @WordColumn({ length: 64 })
  zone!: string;

  @TextColumn({ nullable: true })
  note!: string | null;
}
