import { Check, Entity } from 'typeorm';
import { InstantColumn, ReferenceColumn, TextColumn, WordColumn } from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';
import type { EvidenceBearing, EvidenceKind, EvidenceStrength } from './evidence.words.js';

/** Something that supports or contradicts what is said to have happened. */
@Entity({ name: 'evidence' })
@Check('evidence_bears_on_one', '(event_id IS NULL) <> (claim_id IS NULL)')
export class EvidenceEntity extends KeptRow {
  @ReferenceColumn('provenance_event', { nullable: true })
  eventId!: string | null;

  @ReferenceColumn('claim', { nullable: true })
  claimId!: string | null;

  @WordColumn({ length: 20 })
  bearing!: EvidenceBearing;

  @WordColumn({ length: 30 })
  kind!: EvidenceKind;

  @WordColumn({ length: 20 })
  strength!: EvidenceStrength;

  @TextColumn()
  description!: string;

  /** Where it is kept, in words: a folder, an archive with its shelf mark. */
  @TextColumn({ nullable: true })
  keptAt!: string | null;

  /** It turned out not to bear on it; it stays on record and counts no more. */
  @InstantColumn({ nullable: true })
  withdrawnAt!: string | null;

  @TextColumn({ nullable: true })
  withdrawnReason!: string | null;
}
