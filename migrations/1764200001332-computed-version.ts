import type { MigrationInterface, QueryRunner } from 'typeorm';
import { integer, word } from './support/columns.js';
import { createTable } from './support/createTable.js';

/** Empty: what is computed is computed anew when the collection is next opened. */
export class ComputedVersion1764200001332 implements MigrationInterface {
  name = 'ComputedVersion1764200001332';

  async up(runner: QueryRunner): Promise<void> {
    await createTable(runner, 'computed_version', [
      word('subject', 20, { isPrimary: true }),
      integer('version'),
    ]);
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.dropTable('computed_version');
  }
}
