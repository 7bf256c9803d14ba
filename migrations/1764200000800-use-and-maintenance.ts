import { TableColumn, type MigrationInterface, type QueryRunner } from 'typeorm';
import { instant, integer, kept, orNull, reference, text, word } from './support/columns.js';
import { createTable } from './support/createTable.js';

/** Use on the air, what is to be done by use or by the calendar, and where the station stands. */
export class UseAndMaintenance1764200000800 implements MigrationInterface {
  name = 'UseAndMaintenance1764200000800';

  async up(runner: QueryRunner): Promise<void> {
    await createTable(
      runner,
      'on_air_use',
      [
        ...kept(),
        reference('item_id', 'item'),
        reference('rig_use_id', 'on_air_use', orNull),
        instant('started_at'),
        integer('minutes'),
        integer('contacts'),
        word('band', 10, orNull),
        word('mode', 20, orNull),
        reference('operator_id', 'party', orNull),
        text('note', orNull),
      ],
      {
        indices: [{ name: 'on_air_use_item_start', columnNames: ['item_id', 'started_at'] }],
      },
    );
    await createTable(runner, 'maintenance_rule', [
      ...kept(),
      reference('item_id', 'item'),
      word('title', 200),
      integer('every_use_minutes', orNull),
      integer('every_days', orNull),
      instant('counts_from'),
      text('note', orNull),
      instant('retired_at', orNull),
    ]);
    await createTable(runner, 'maintenance_done', [
      ...kept(),
      reference('rule_id', 'maintenance_rule'),
      instant('done_at'),
      reference('done_by_id', 'party', orNull),
      text('note', orNull),
    ]);
    const columns = [
      { name: 'itu_region', type: 'integer', isNullable: true },
      { name: 'licence_class', type: 'varchar', length: '200', isNullable: true },
    ];
    for (const column of columns) await runner.addColumn('collection', new TableColumn(column));
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.dropColumns('collection', ['itu_region', 'licence_class']);
    for (const table of ['maintenance_done', 'maintenance_rule', 'on_air_use']) {
      await runner.dropTable(table);
    }
  }
}
