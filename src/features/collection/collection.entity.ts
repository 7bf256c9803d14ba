import { Entity } from 'typeorm';
import { CountColumn, ReferenceColumn, WordColumn } from '../../db/columns.js';
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

  /** Of the ITU, 1 to 3; null while nobody has said. */
  @CountColumn({ nullable: true })
  ituRegion!: 1 | 2 | 3 | null;

  /** The class of the operator's licence, in words. */
  @WordColumn({ nullable: true })
  licenceClass!: string | null;
}
