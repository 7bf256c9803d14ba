import { Entity, Index } from 'typeorm';
import {
  IdColumn,
  InstantColumn,
  JsonColumn,
  LargeCountColumn,
  WordColumn,
} from '../../db/columns.js';
import type { Redacted } from './entryHash.js';

/** One change of one record: who, when, before and after. Only ever added to, each chained to the one before. */
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

  /** Its place in the log, from 1 without gaps; null only until the log is first chained. */
  @LargeCountColumn({ nullable: true })
  @Index({ unique: true })
  sequence!: number | null;

  /** `entryHash` of this entry and, through it, of all before it. */
  @WordColumn({ length: 64, nullable: true })
  entryHash!: string | null;

  /** 128 random bits in hexadecimal; null once something was taken out of the entry. */
  @WordColumn({ length: 32, nullable: true })
  salt!: string | null;

  /** What stands in for the values that were taken out. */
  @JsonColumn({ nullable: true })
  redacted!: Redacted | null;
}
