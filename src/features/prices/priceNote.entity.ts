import { Check, Entity } from 'typeorm';
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
import type { PriceKind } from './priceKind.js';

/** A price seen or paid somewhere on a day, for a part type or for a whole set of a model. */
@Entity({ name: 'price_note' })
@Check('price_note_of_one', '(part_type_id IS NULL) <> (model_id IS NULL)')
@Check('price_note_quantity', 'quantity > 0')
export class PriceNoteEntity extends KeptRow {
  @ReferenceColumn('part_type', { nullable: true })
  partTypeId!: string | null;

  @ReferenceColumn('model', { nullable: true })
  modelId!: string | null;

  @WordColumn({ length: 20 })
  kind!: PriceKind;

  @LocalDateColumn()
  notedOn!: string;

  /** For all of `quantity`. */
  @LargeCountColumn()
  amountMinorUnits!: number;

  @WordColumn({ length: 3 })
  currency!: string;

  @CountColumn()
  quantity!: number;

  @WordColumn()
  seenAt!: string;

  @TextColumn({ nullable: true })
  note!: string | null;

  /** Written down by mistake: kept, and no longer counted. */
  @InstantColumn({ nullable: true })
  struckAt!: string | null;
}
