import type { MigrationInterface, QueryRunner } from 'typeorm';
import {
  instant,
  integer,
  kept,
  localDate,
  orNull,
  reference,
  text,
  word,
} from './support/columns.js';
import { createTable } from './support/createTable.js';

/** What is ordered and on its way. */
export class PartOrders1764200001331 implements MigrationInterface {
  name = 'PartOrders1764200001331';

  async up(runner: QueryRunner): Promise<void> {
    await createTable(
      runner,
      'part_order',
      [
        ...kept(),
        reference('item_id', 'item', orNull),
        reference('part_type_id', 'part_type', orNull),
        word('description', 200, orNull),
        text('designators'),
        reference('want_id', 'want', orNull),
        integer('quantity'),
        word('ordered_from', 200),
        localDate('ordered_on'),
        localDate('expected_on', orNull),
        word('reference', 200, orNull),
        text('note', orNull),
        localDate('arrived_on', orNull),
        instant('cancelled_at', orNull),
      ],
      {
        checks: {
          part_order_counts: 'quantity >= 1',
          part_order_names: 'part_type_id IS NOT NULL OR description IS NOT NULL',
        },
      },
    );
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.dropTable('part_order');
  }
}
