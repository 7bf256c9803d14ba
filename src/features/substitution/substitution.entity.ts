import { Check, Entity, Index } from 'typeorm';
import {
  FlagColumn,
  InstantColumn,
  ReferenceColumn,
  TextColumn,
  WordColumn,
} from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';
import type { SubstitutionGrade } from './substitutionGrade.js';

/** A person wrote down that one part type may stand in for another. */
@Entity({ name: 'substitution' })
@Index(['originalId', 'substituteId'], { unique: true })
@Check('substitution_of_two', 'original_id <> substitute_id')
export class SubstitutionEntity extends KeptRow {
  @ReferenceColumn('part_type')
  originalId!: string;

  @ReferenceColumn('part_type')
  substituteId!: string;

  @WordColumn({ length: 30 })
  grade!: SubstitutionGrade;

  /** The original serves in place of the substitute too. */
  @FlagColumn()
  isMutual!: boolean;

  @TextColumn({ nullable: true })
  consequence!: string | null;

  @TextColumn({ nullable: true })
  recheck!: string | null;

  @TextColumn({ nullable: true })
  source!: string | null;

  @InstantColumn({ nullable: true })
  retiredAt!: string | null;
}
