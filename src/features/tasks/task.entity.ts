import { Entity } from 'typeorm';
import {
  CountColumn,
  InstantColumn,
  JsonColumn,
  ReferenceColumn,
  TextColumn,
  WordColumn,
} from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';
import type { HazardKind } from '../hazards/hazardKind.js';
import type { EarningRuleKind } from './earningRuleKind.js';
import type { EstimateDistribution } from './estimateDistribution.js';
import type { ProgressEvidenceKind } from './progressEvidenceKind.js';
import type { TaskKind } from './taskKind.js';
import type { TaskStatus } from './taskStatus.js';

/** A unit of work with a three-point estimate. */
@Entity({ name: 'task' })
export class TaskEntity extends KeptRow {
  @ReferenceColumn('project')
  projectId!: string;

  @CountColumn()
  ordinal!: number;

  @WordColumn()
  title!: string;

  @WordColumn({ length: 20 })
  kind!: TaskKind;

  @WordColumn({ length: 20 })
  status!: TaskStatus;

  @CountColumn()
  optimisticMinutes!: number;

  @CountColumn()
  likelyMinutes!: number;

  @CountColumn()
  pessimisticMinutes!: number;

  /** How the three points are read. */
  @WordColumn({ length: 20, default: 'PERT_BETA' })
  estimateDistribution!: EstimateDistribution;

  @WordColumn({ length: 30 })
  earningRule!: EarningRuleKind;

  /** 0–100, for the rule that counts a stated percentage; it earns only with its evidence. */
  @CountColumn({ nullable: true })
  percentComplete!: number | null;

  @TextColumn({ nullable: true })
  percentEvidence!: string | null;

  @WordColumn({ length: 20, nullable: true })
  percentEvidenceKind!: ProgressEvidenceKind | null;

  @ReferenceColumn('reading', { nullable: true })
  percentEvidenceReadingId!: string | null;

  /** A picture that is attached to the task or to what it is about. */
  @ReferenceColumn('attachment', { nullable: true })
  percentEvidenceAttachmentId!: string | null;

  /** What can hurt while doing it. */
  @JsonColumn()
  hazardKinds!: HazardKind[];

  @InstantColumn({ nullable: true })
  startedAt!: string | null;

  @InstantColumn({ nullable: true })
  finishedAt!: string | null;

  @TextColumn({ nullable: true })
  note!: string | null;
}
