import type { MigrationInterface, QueryRunner } from 'typeorm';
import { bigint, instant, orNull, text, word } from './support/columns.js';
import { createTable } from './support/createTable.js';

export class ChangeEvents1764200000300 implements MigrationInterface {
  name = 'ChangeEvents1764200000300';

  async up(runner: QueryRunner): Promise<void> {
    await createTable(runner, 'change_event', [
      bigint('sequence', { isPrimary: true }),
      instant('at'),
      word('action', 60),
      word('actor_id', 36, orNull),
      text('records', orNull),
      text('item_ids', orNull),
    ]);
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.dropTable('change_event');
  }
}
