import { Entity } from 'typeorm';
import {
  CountColumn,
  InstantColumn,
  LargeCountColumn,
  LocalDateColumn,
  ReferenceColumn,
  TextColumn,
  WordColumn,
} from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';
import type { ProjectStatus } from './projectStatus.js';
import type { TargetStandard } from './targetStandard.js';

/** A restoration: an item, a target standard, ceilings of money and hours. */
@Entity({ name: 'project' })
export class ProjectEntity extends KeptRow {
  @ReferenceColumn('item')
  itemId!: string;

  @WordColumn()
  title!: string;

  @WordColumn({ length: 20 })
  targetStandard!: TargetStandard;

  @WordColumn({ length: 20 })
  status!: ProjectStatus;

  @LocalDateColumn({ nullable: true })
  startedOn!: string | null;

  @InstantColumn({ nullable: true })
  closedAt!: string | null;

  @LargeCountColumn({ nullable: true })
  ceilingMinorUnits!: number | null;

  @WordColumn({ length: 3, nullable: true })
  ceilingCurrency!: string | null;

  @CountColumn({ nullable: true })
  ceilingMinutes!: number | null;

  /** What was decided, and why: for use, for show, for parts, passed on, deferred. */
  @TextColumn({ nullable: true })
  decision!: string | null;
}
