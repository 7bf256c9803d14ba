import { TableIndex, type MigrationInterface, type QueryRunner } from 'typeorm';
import { bigint, id, instant, orNull, text, word } from './support/columns.js';
import { createTable } from './support/createTable.js';

/** The entries that are there already are chained when the collection is first opened. */
export class ChainedLog1764200000701 implements MigrationInterface {
  name = 'ChainedLog1764200000701';

  async up(runner: QueryRunner): Promise<void> {
    const added = [
      bigint('sequence', orNull),
      word('entry_hash', 64, orNull),
      word('salt', 32, orNull),
      text('redacted', orNull),
    ];
    await runner.addColumns(
      'change',
      added.map(({ column }) => column),
    );
    await runner.createIndex(
      'change',
      new TableIndex({ columnNames: ['sequence'], isUnique: true }),
    );
    await createTable(runner, 'signed_head', [
      id(),
      bigint('sequence'),
      word('entry_hash', 64),
      instant('signed_at'),
      text('public_key'),
      text('signature'),
    ]);
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.dropTable('signed_head');
    const table = await runner.getTable('change');
    const index = table?.indices.find(({ columnNames }) => columnNames.join() === 'sequence');
    if (index) await runner.dropIndex('change', index);
    await runner.dropColumns('change', ['sequence', 'entry_hash', 'salt', 'redacted']);
  }
}
