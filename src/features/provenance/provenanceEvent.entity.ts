import { Entity } from 'typeorm';
import { LocalDateColumn, ReferenceColumn, TextColumn, WordColumn } from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';
import type { EvidenceStanding } from './evidenceStanding.js';
import type { ProvenanceEventKind } from './provenanceEventKind.js';

/** Something that happened to an item, at a date as uncertain as it is. */
@Entity({ name: 'provenance_event' })
export class ProvenanceEventEntity extends KeptRow {
  @ReferenceColumn('item')
  itemId!: string;

  @WordColumn({ length: 20 })
  kind!: ProvenanceEventKind;

  /** As written (EDTF, ISO 8601-2); null when nobody knows. */
  @WordColumn({ length: 80, nullable: true })
  dateEdtf!: string | null;

  /** First and last day that `dateEdtf` allows, for sorting; null where it is open. */
  @LocalDateColumn({ nullable: true })
  earliestOn!: string | null;

  @LocalDateColumn({ nullable: true })
  latestOn!: string | null;

  @ReferenceColumn('party', { nullable: true })
  fromPartyId!: string | null;

  @ReferenceColumn('party', { nullable: true })
  toPartyId!: string | null;

  @WordColumn({ nullable: true })
  placeName!: string | null;

  @WordColumn({ length: 20 })
  standing!: EvidenceStanding;

  @TextColumn({ nullable: true })
  evidence!: string | null;

  @TextColumn({ nullable: true })
  note!: string | null;
}
