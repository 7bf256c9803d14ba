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

/** A project's plan as it was on a day, kept when the plan changes. */
@Entity({ name: 'baseline' })
export class BaselineEntity extends KeptRow {
  @ReferenceColumn('project')
  projectId!: string;

  @InstantColumn()
  keptAt!: string;

  @LocalDateColumn()
  startsOn!: string;

  @CountColumn()
  minutesPerWeek!: number;

  @LargeCountColumn({ nullable: true })
  budgetMinorUnits!: number | null;

  @WordColumn({ length: 3, nullable: true })
  budgetCurrency!: string | null;

  @TextColumn({ nullable: true })
  note!: string | null;
}
