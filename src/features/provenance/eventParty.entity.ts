import { Entity } from 'typeorm';
import { ReferenceColumn, TextColumn, WordColumn } from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';
import type { EventPartyRole } from './evidence.words.js';

/** Somebody had a part in an event, beside those who gave and received. */
@Entity({ name: 'event_party' })
export class EventPartyEntity extends KeptRow {
  @ReferenceColumn('provenance_event')
  eventId!: string;

  @ReferenceColumn('party')
  partyId!: string;

  @WordColumn({ length: 20 })
  role!: EventPartyRole;

  @TextColumn({ nullable: true })
  note!: string | null;
}
