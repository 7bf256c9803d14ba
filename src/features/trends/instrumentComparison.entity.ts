import { Entity } from 'typeorm';
import { LocalDateColumn, TextColumn, WordColumn } from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';

/** The same parts measured with two instruments: what makes their readings comparable. */
@Entity({ name: 'instrument_comparison' })
export class InstrumentComparisonEntity extends KeptRow {
  @WordColumn({ length: 80 })
  quantity!: string;

  @WordColumn()
  fromInstrument!: string;

  @WordColumn()
  toInstrument!: string;

  /** Exact decimal: a reading of the first, times this, is what the second would have shown. */
  @TextColumn()
  factor!: string;

  @LocalDateColumn()
  comparedOn!: string;

  @TextColumn({ nullable: true })
  note!: string | null;
}
