import { Entity } from 'typeorm';
import {
  IdColumn,
  InstantColumn,
  LargeCountColumn,
  TextColumn,
  WordColumn,
} from '../../db/columns.js';

/** The head of the log at a moment, signed with the owner's key. */
@Entity({ name: 'signed_head' })
export class SignedHeadEntity {
  @IdColumn()
  id!: string;

  @LargeCountColumn()
  sequence!: number;

  @WordColumn({ length: 64 })
  entryHash!: string;

  @InstantColumn()
  signedAt!: string;

  /** SPKI in PEM. */
  @TextColumn()
  publicKey!: string;

  /** Ed25519 (RFC 8032) over `headStatement`, in base64. */
  @TextColumn()
  signature!: string;
}
