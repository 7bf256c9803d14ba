import { Entity, ForeignKey, Index } from 'typeorm';
import { IdColumn, LocalDateColumn, WordColumn } from '../../db/columns.js';

/**
 * What proves a token, and the day it was last used: written without a place in the history, so
 * that neither the log nor an archive holds a digest, and so that reading does not fill the log.
 */
@Entity({ name: 'read_token_proof' })
export class ReadTokenProofEntity {
  /** The token's id. */
  @ForeignKey('read_token')
  @IdColumn()
  id!: string;

  /** The open half of the token, by which it is found. */
  @Index({ unique: true })
  @WordColumn({ length: 12 })
  handle!: string;

  /** SHA-256 of the whole token, hexadecimal. */
  @WordColumn({ length: 64 })
  digest!: string;

  /** UTC; no finer than the day, so that it tells nobody's habits. */
  @LocalDateColumn({ nullable: true })
  lastUsedOn!: string | null;
}
