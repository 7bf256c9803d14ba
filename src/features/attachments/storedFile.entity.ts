import { Entity, Index } from 'typeorm';
import {
  CountColumn,
  IdColumn,
  InstantColumn,
  LargeCountColumn,
  WordColumn,
} from '../../db/columns.js';

/** A file kept once, whatever it is attached to. Its bytes lie in the folder of attachments. */
@Entity({ name: 'stored_file' })
export class StoredFileEntity {
  @IdColumn()
  id!: string;

  /** SHA-256 of the bytes, 64 hexadecimal digits. */
  @WordColumn({ length: 64 })
  @Index({ unique: true })
  digest!: string;

  @LargeCountColumn()
  byteLength!: number;

  /** As the bytes say, not as the sender said. */
  @WordColumn({ length: 100 })
  mediaType!: string;

  @WordColumn()
  originalName!: string;

  /** As seen upright; null for what is no picture. */
  @CountColumn({ nullable: true })
  widthPixels!: number | null;

  @CountColumn({ nullable: true })
  heightPixels!: number | null;

  /** ISO 8601 by the camera's clock, with its offset where the camera wrote one. */
  @WordColumn({ length: 32, nullable: true })
  takenAt!: string | null;

  @InstantColumn()
  keptAt!: string;
}
