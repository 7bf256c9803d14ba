import { Entity } from 'typeorm';
import { ReferenceColumn, WordColumn } from '../../db/columns.js';
import { KeptRow } from '../../db/keptRow.js';

/** The one row that says whose collection this is and what it counts in. */
@Entity({ name: 'collection' })
export class CollectionEntity extends KeptRow {
  @WordColumn()
  name!: string;

  @ReferenceColumn('party', { nullable: true })
  ownerId!: string | null;

  /** ISO 4217. */
  @WordColumn({ length: 3 })
  homeCurrency!: string;

  /** IANA zone in which bench hours are kept unless a session says otherwise. */
  @WordColumn({ length: 64 })
  zone!: string;
}
