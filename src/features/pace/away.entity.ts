import { Entity } from 'typeorm';
import {
  FlagColumn,
  InstantColumn,
  LocalDateColumn,
  ReferenceColumn,
  TextColumn,
} from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';

/** Days on which a person will not be, or was not, at the bench. */
@Entity({ name: 'away' })
export class AwayEntity extends KeptRow {
  @ReferenceColumn('party')
  personId!: string;

  @LocalDateColumn()
  fromOn!: string;

  @LocalDateColumn()
  untilOn!: string;

  @FlagColumn()
  isYearly!: boolean;

  @TextColumn({ nullable: true })
  note!: string | null;

  @InstantColumn({ nullable: true })
  withdrawnAt!: string | null;
}
