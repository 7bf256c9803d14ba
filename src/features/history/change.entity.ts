import { Entity, Index } from 'typeorm';
import { IdColumn, InstantColumn, JsonColumn, WordColumn } from '../../db/columns.js';

/** One change of one record: who, when, before and after. Only ever added to. */
@Entity({ name: 'change' })
@Index(['recordTable', 'recordId'])
export class ChangeEntity {
  @IdColumn()
  id!: string;

  @InstantColumn()
  changedAt!: string;

  @WordColumn({ length: 36, nullable: true })
  actorId!: string | null;

  @WordColumn({ length: 40 })
  recordTable!: string;

  @WordColumn({ length: 36 })
  recordId!: string;

  /** The verb that made it: `fitComponent`. */
  @WordColumn({ length: 60 })
  action!: string;

  @JsonColumn({ nullable: true })
  before!: Record<string, unknown> | null;

  @JsonColumn({ nullable: true })
  after!: Record<string, unknown> | null;
}
