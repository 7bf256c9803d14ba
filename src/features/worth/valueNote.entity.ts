import { Check, Entity } from 'typeorm';
import {
  InstantColumn,
  LargeCountColumn,
  LocalDateColumn,
  ReferenceColumn,
  TextColumn,
  WordColumn,
} from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';
import type { ConditionStandard } from './conditionStandard.js';
import type { ValueBasis } from './valueBasis.js';

/** What a set of a model, or one item, was held to be worth on a day, at a standard, by somebody. */
@Entity({ name: 'value_note' })
@Check('value_note_of_one', '(model_id IS NULL) <> (item_id IS NULL)')
export class ValueNoteEntity extends KeptRow {
  @ReferenceColumn('model', { nullable: true })
  modelId!: string | null;

  @ReferenceColumn('item', { nullable: true })
  itemId!: string | null;

  @WordColumn({ length: 20 })
  basis!: ValueBasis;

  @WordColumn({ length: 20 })
  standard!: ConditionStandard;

  @LocalDateColumn()
  valuedOn!: string;

  /** One chance in ten that it is less; null when the source gave no range. */
  @LargeCountColumn({ nullable: true })
  lowMinorUnits!: number | null;

  @LargeCountColumn()
  likelyMinorUnits!: number;

  /** One chance in ten that it is more. */
  @LargeCountColumn({ nullable: true })
  highMinorUnits!: number | null;

  @WordColumn({ length: 3 })
  currency!: string;

  @WordColumn()
  source!: string;

  @TextColumn({ nullable: true })
  note!: string | null;

  @InstantColumn({ nullable: true })
  struckAt!: string | null;
}
