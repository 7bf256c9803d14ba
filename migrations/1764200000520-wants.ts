import type { MigrationInterface, QueryRunner } from 'typeorm';
import {
  bigint,
  instant,
  integer,
  kept,
  orNull,
  reference,
  text,
  word,
} from './support/columns.js';
import { createTable } from './support/createTable.js';

export class Wants1764200000520 implements MigrationInterface {
  name = 'Wants1764200000520';

  async up(runner: QueryRunner): Promise<void> {
    await createTable(
      runner,
      'want',
      [
        ...kept(),
        reference('part_type_id', 'part_type', orNull),
        word('description', 200, orNull),
        reference('item_id', 'item', orNull),
        word('designator', 60, orNull),
        reference('task_id', 'task', orNull),
        integer('quantity'),
        bigint('ceiling_minor_units', orNull),
        word('ceiling_currency', 3, orNull),
        instant('dropped_at', orNull),
        text('note', orNull),
      ],
      {
        checks: {
          want_counts: 'quantity >= 1',
          want_ceiling: '(ceiling_minor_units IS NULL) = (ceiling_currency IS NULL)',
        },
      },
    );
    await createTable(
      runner,
      'want_substitute',
      [...kept(), reference('want_id', 'want'), reference('part_type_id', 'part_type')],
      { indices: [{ columnNames: ['want_id', 'part_type_id'], isUnique: true }] },
    );
    await createTable(
      runner,
      'find',
      [
        ...kept(),
        word('key', 100),
        word('digest', 64),
        reference('want_id', 'want', orNull),
        reference('acquisition_id', 'acquisition'),
        reference('stock_lot_id', 'stock_lot'),
      ],
      { indices: [{ columnNames: ['key'], isUnique: true }] },
    );
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.dropTable('find');
    await runner.dropTable('want_substitute');
    await runner.dropTable('want');
  }
}
