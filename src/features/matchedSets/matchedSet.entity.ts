import { Entity } from 'typeorm';
import { TextColumn, WordColumn } from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';
import type { ReadingTier } from '../readings/readingTier.js';

/** Components that are to read alike: a pair of finals, a quad of diodes. */
@Entity({ name: 'matched_set' })
export class MatchedSetEntity extends KeptRow {
  @WordColumn()
  name!: string;

  /** The quantity in which they are to match. */
  @WordColumn({ length: 80 })
  quantity!: string;

  @WordColumn({ length: 20 })
  tier!: ReadingTier;

  /** Exact decimal: the spread, in per cent of the mean, that still counts as matched. */
  @TextColumn()
  largestMismatchPercent!: string;

  @TextColumn({ nullable: true })
  source!: string | null;

  @TextColumn({ nullable: true })
  note!: string | null;
}
