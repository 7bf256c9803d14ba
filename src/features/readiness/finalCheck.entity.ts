import { Entity } from 'typeorm';
import {
  CountColumn,
  FlagColumn,
  InstantColumn,
  ReferenceColumn,
  TextColumn,
  WordColumn,
} from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';

/** A check done before a set goes on the air; it goes stale. */
@Entity({ name: 'final_check' })
export class FinalCheckEntity extends KeptRow {
  @ReferenceColumn('item')
  itemId!: string;

  /** What was checked: `insulation to chassis`, `output into a dummy load`. */
  @WordColumn({ length: 120 })
  procedure!: string;

  @InstantColumn()
  checkedAt!: string;

  @FlagColumn()
  isPassed!: boolean;

  @CountColumn()
  validDays!: number;

  @ReferenceColumn('party', { nullable: true })
  checkedById!: string | null;

  @TextColumn({ nullable: true })
  note!: string | null;
}
