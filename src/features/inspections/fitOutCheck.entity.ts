import { Entity, Index } from 'typeorm';
import { InstantColumn, ReferenceColumn, TextColumn, WordColumn } from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';
import type { PositionState } from './positionState.js';

/** One position of the fit-out, checked off at an inspection. The latest check counts. */
@Entity({ name: 'fit_out_check' })
@Index(['inspectionId', 'positionId'], { unique: true })
export class FitOutCheckEntity extends KeptRow {
  @ReferenceColumn('inspection')
  inspectionId!: string;

  @ReferenceColumn('item')
  itemId!: string;

  @ReferenceColumn('fit_out_position')
  positionId!: string;

  @WordColumn({ length: 10 })
  state!: PositionState;

  @InstantColumn()
  checkedAt!: string;

  @TextColumn({ nullable: true })
  note!: string | null;
}
