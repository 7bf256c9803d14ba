import { TableForeignKey, type MigrationInterface, type QueryRunner } from 'typeorm';
import { id, instant, kept, localDate, orNull, text, word } from './support/columns.js';
import { createTable } from './support/createTable.js';

/** Tokens that open ways out to programs that read; what proves them stands apart. */
export class ReadTokens1764200001360 implements MigrationInterface {
  name = 'ReadTokens1764200001360';

  async up(runner: QueryRunner): Promise<void> {
    await createTable(runner, 'read_token', [
      ...kept(),
      word('name', 200),
      text('scopes'),
      text('shows'),
      localDate('last_day', orNull),
      instant('taken_back_at', orNull),
    ]);
    const ofToken = new TableForeignKey({
      columnNames: ['id'],
      referencedTableName: 'read_token',
      referencedColumnNames: ['id'],
    });
    await createTable(
      runner,
      'read_token_proof',
      [
        { ...id(), foreignKey: ofToken },
        word('handle', 12),
        word('digest', 64),
        localDate('last_used_on', orNull),
      ],
      { indices: [{ columnNames: ['handle'], isUnique: true }] },
    );
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.dropTable('read_token_proof');
    await runner.dropTable('read_token');
  }
}
