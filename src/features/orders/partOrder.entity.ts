import { Check, Entity } from 'typeorm';
import {
  CountColumn,
  InstantColumn,
  JsonColumn,
  LocalDateColumn,
  ReferenceColumn,
  TextColumn,
  WordColumn,
} from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';

/** A part that is on its way: so many of it, from where, since when, and by when. */
@Entity({ name: 'part_order' })
@Check('part_order_counts', 'quantity >= 1')
@Check('part_order_names', 'part_type_id IS NOT NULL OR description IS NOT NULL')
export class PartOrderEntity extends KeptRow {
  @ReferenceColumn('item', { nullable: true })
  itemId!: string | null;

  @ReferenceColumn('part_type', { nullable: true })
  partTypeId!: string | null;

  /** What it is, where there is no part type: 0.047 uF 630 V. */
  @WordColumn({ nullable: true })
  description!: string | null;

  /** Places of the item that it is for, as the fit-out spells them. */
  @JsonColumn()
  designators!: string[];

  @ReferenceColumn('want', { nullable: true })
  wantId!: string | null;

  @CountColumn()
  quantity!: number;

  @WordColumn()
  orderedFrom!: string;

  @LocalDateColumn()
  orderedOn!: string;

  @LocalDateColumn({ nullable: true })
  expectedOn!: string | null;

  /** The supplier's number of the order. */
  @WordColumn({ nullable: true })
  reference!: string | null;

  @TextColumn({ nullable: true })
  note!: string | null;

  @LocalDateColumn({ nullable: true })
  arrivedOn!: string | null;

  @InstantColumn({ nullable: true })
  cancelledAt!: string | null;
}
