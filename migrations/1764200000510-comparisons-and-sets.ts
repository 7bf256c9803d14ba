import type { MigrationInterface, QueryRunner } from 'typeorm';
import { kept, localDate, orNull, reference, text, word } from './support/columns.js';
import { createTable } from './support/createTable.js';

export class ComparisonsAndSets1764200000510 implements MigrationInterface {
  name = 'ComparisonsAndSets1764200000510';

  async up(runner: QueryRunner): Promise<void> {
    await createTable(runner, 'instrument_comparison', [
      ...kept(),
      word('quantity', 80),
      word('from_instrument', 200),
      word('to_instrument', 200),
      text('factor'),
      localDate('compared_on'),
      text('note', orNull),
    ]);
    await createTable(runner, 'matched_set', [
      ...kept(),
      word('name', 200),
      word('quantity', 80),
      word('tier', 20),
      text('largest_mismatch_percent'),
      text('source', orNull),
      text('note', orNull),
    ]);
    await createTable(
      runner,
      'matched_set_member',
      [...kept(), reference('set_id', 'matched_set'), reference('component_id', 'component')],
      { indices: [{ columnNames: ['set_id', 'component_id'], isUnique: true }] },
    );
    await createTable(
      runner,
      'sweep',
      [...kept(), word('key', 100), word('digest', 64), reference('item_id', 'item'), text('rows')],
      { indices: [{ columnNames: ['key'], isUnique: true }] },
    );
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.dropTable('sweep');
    await runner.dropTable('matched_set_member');
    await runner.dropTable('matched_set');
    await runner.dropTable('instrument_comparison');
  }
}
