import type { MigrationInterface, QueryRunner } from 'typeorm';
import {
  bigint,
  id,
  instant,
  integer,
  kept,
  orNull,
  reference,
  text,
  word,
} from './support/columns.js';
import { createTable } from './support/createTable.js';

export class Attachments1764200000700 implements MigrationInterface {
  name = 'Attachments1764200000700';

  async up(runner: QueryRunner): Promise<void> {
    await createTable(
      runner,
      'stored_file',
      [
        id(),
        word('digest', 64),
        bigint('byte_length'),
        word('media_type', 100),
        word('original_name', 200),
        integer('width_pixels', orNull),
        integer('height_pixels', orNull),
        word('taken_at', 32, orNull),
        instant('kept_at'),
      ],
      { indices: [{ columnNames: ['digest'], isUnique: true }] },
    );
    await createTable(
      runner,
      'attachment',
      [
        ...kept(),
        reference('file_id', 'stored_file'),
        word('subject_type', 40),
        word('subject_id', 36),
        word('role', 20),
        text('caption', orNull),
        reference('before_id', 'attachment', orNull),
        integer('ordinal'),
        instant('detached_at', orNull),
      ],
      { indices: [{ columnNames: ['subject_id'] }] },
    );
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.dropTable('attachment');
    await runner.dropTable('stored_file');
  }
}
