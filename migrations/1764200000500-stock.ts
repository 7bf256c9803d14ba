import type { MigrationInterface, QueryRunner } from 'typeorm';
import {
  bigint,
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

export class Stock1764200000500 implements MigrationInterface {
  name = 'Stock1764200000500';

  async up(runner: QueryRunner): Promise<void> {
    await createTable(
      runner,
      'stock_lot',
      [
        ...kept(),
        reference('part_type_id', 'part_type', orNull),
        word('description', 200, orNull),
        reference('component_id', 'component', orNull),
        reference('place_id', 'place', orNull),
        word('condition', 20),
        integer('quantity'),
        localDate('received_on'),
        reference('lot_line_id', 'lot_line', orNull),
        bigint('cost_minor_units', orNull),
        word('currency', 3, orNull),
        text('note', orNull),
      ],
      {
        checks: {
          stock_lot_counts: 'quantity >= 0',
          stock_lot_cost: '(cost_minor_units IS NULL) = (currency IS NULL)',
        },
      },
    );
    await createTable(
      runner,
      'stock_reservation',
      [
        ...kept(),
        reference('lot_id', 'stock_lot'),
        reference('task_id', 'task'),
        integer('quantity'),
        instant('reserved_at'),
        instant('released_at', orNull),
        text('note', orNull),
      ],
      { checks: { stock_reservation_counts: 'quantity >= 1' } },
    );
    await createTable(
      runner,
      'stock_draw',
      [
        ...kept(),
        reference('lot_id', 'stock_lot'),
        integer('quantity'),
        word('reason', 20),
        instant('drawn_at'),
        reference('task_id', 'task', orNull),
        reference('reservation_id', 'stock_reservation', orNull),
        reference('fitting_id', 'fitting', orNull),
        text('note', orNull),
      ],
      { checks: { stock_draw_counts: 'quantity >= 0' } },
    );
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.dropTable('stock_draw');
    await runner.dropTable('stock_reservation');
    await runner.dropTable('stock_lot');
  }
}
