import { Entity, Index } from 'typeorm';
import { CountColumn, IdColumn, WordColumn } from '../../db/columns.js';

/** Counted bench time of an item by task kind, person and local month. Computed, never typed in. */
@Entity({ name: 'item_hours' })
@Index(['itemId'])
@Index(['localMonth', 'taskKind', 'seconds'])
export class ItemHoursEntity {
  @IdColumn()
  id!: string;

  @WordColumn({ length: 36 })
  itemId!: string;

  @WordColumn({ length: 20 })
  taskKind!: string;

  @WordColumn({ length: 36 })
  personId!: string;

  /** `2026-03`, in the session's own zone. */
  @WordColumn({ length: 7 })
  localMonth!: string;

  @CountColumn()
  seconds!: number;
}
