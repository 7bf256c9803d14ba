import { Entity } from 'typeorm';
import {
  CountColumn,
  InstantColumn,
  ReferenceColumn,
  TextColumn,
  WordColumn,
} from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';

/** Something to be done on an item again and again: by hours of use, by the calendar, or both. */
@Entity({ name: 'maintenance_rule' })
export class MaintenanceRuleEntity extends KeptRow {
  @ReferenceColumn('item')
  itemId!: string;

  @WordColumn()
  title!: string;

  @CountColumn({ nullable: true })
  everyUseMinutes!: number | null;

  @CountColumn({ nullable: true })
  everyDays!: number | null;

  /** From when use and days count until it is done for the first time. */
  @InstantColumn()
  countsFrom!: string;

  @TextColumn({ nullable: true })
  note!: string | null;

  @InstantColumn({ nullable: true })
  retiredAt!: string | null;
}
