import { Entity } from 'typeorm';
import { InstantColumn, TextColumn, WordColumn } from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';
import type { PartyKind } from './partyKind.js';

/** A person or an organisation: who works, who sold, who owned. */
@Entity({ name: 'party' })
export class PartyEntity extends KeptRow {
  @WordColumn({ length: 20 })
  kind!: PartyKind;

  @WordColumn()
  name!: string;

  @TextColumn({ nullable: true })
  contact!: string | null;

  @TextColumn({ nullable: true })
  note!: string | null;

  @InstantColumn({ nullable: true })
  retiredAt!: string | null;
}
