import { Check, Entity, Index } from 'typeorm';
import {
  CountColumn,
  FlagColumn,
  InstantColumn,
  ReferenceColumn,
  TextColumn,
  WordColumn,
} from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';
import type { Zone } from '../inspections/zone.js';
import type { SurfaceMaterial } from './surfaceMaterial.js';
import type { TreatmentOutcome } from './treatmentOutcome.js';

/** A cleaning or finishing step on one surface. */
@Entity({ name: 'treatment' })
@Index(['itemId', 'treatedAt'])
@Index(['treatedAt'])
@Check('treatment_passes', 'passes >= 1')
@Check('treatment_dwell', 'dwell_minutes IS NULL OR dwell_minutes >= 0')
@Check('treatment_override', '(override_reason IS NULL) = (overridden_by_id IS NULL)')
export class TreatmentEntity extends KeptRow {
  @ReferenceColumn('item')
  itemId!: string;

  @ReferenceColumn('component', { nullable: true })
  componentId!: string | null;

  @ReferenceColumn('task', { nullable: true })
  taskId!: string | null;

  @ReferenceColumn('finding', { nullable: true })
  findingId!: string | null;

  @WordColumn({ length: 30, nullable: true })
  zone!: Zone | null;

  @WordColumn()
  surface!: string;

  @WordColumn({ length: 30 })
  material!: SurfaceMaterial;

  @CountColumn({ nullable: true })
  dwellMinutes!: number | null;

  @CountColumn()
  passes!: number;

  /** Rinsed off at its end, so that nothing is left to meet the next agent. */
  @FlagColumn()
  isRinsed!: boolean;

  @WordColumn({ length: 30 })
  outcome!: TreatmentOutcome;

  @TextColumn({ nullable: true })
  result!: string | null;

  @TextColumn({ nullable: true })
  remains!: string | null;

  @InstantColumn()
  treatedAt!: string;

  @ReferenceColumn('party', { nullable: true })
  treatedById!: string | null;

  /** Why agents that must not meet were used together all the same, and who answers for it. */
  @TextColumn({ nullable: true })
  overrideReason!: string | null;

  @ReferenceColumn('party', { nullable: true })
  overriddenById!: string | null;
}
