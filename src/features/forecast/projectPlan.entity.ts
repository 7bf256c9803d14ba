import { Entity, Index } from 'typeorm';
import { CountColumn, ReferenceColumn, WordColumn } from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';

/** What a forecast of a project takes for granted, and its place in the queue; one row a project. */
@Entity({ name: 'project_plan' })
@Index('plan_one_a_project', ['projectId'], { unique: true })
export class ProjectPlanEntity extends KeptRow {
  @ReferenceColumn('project')
  projectId!: string;

  /** The lower, the earlier; null comes after all that have one, in the order of opening. */
  @CountColumn({ nullable: true })
  priority!: number | null;

  /** Who does the work; null for the owner of the collection. */
  @ReferenceColumn('party', { nullable: true })
  workedById!: string | null;

  /** Between the normal scores of any two tasks, 0–95. */
  @CountColumn()
  correlationPercent!: number;

  /** null for the item's inventory number. */
  @WordColumn({ length: 60, nullable: true })
  seed!: string | null;
}
