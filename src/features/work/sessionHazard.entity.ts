import { Entity } from 'typeorm';
import { FlagColumn, ReferenceColumn } from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';

/** A hazard that stood when a session began, and whether it was put before the person. */
@Entity({ name: 'session_hazard' })
export class SessionHazardEntity extends KeptRow {
  @ReferenceColumn('work_session')
  sessionId!: string;

  @ReferenceColumn('hazard')
  hazardId!: string;

  /** The answer that began the session carried it. */
  @FlagColumn()
  isShown!: boolean;
}
