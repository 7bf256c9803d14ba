import type { MigrationInterface, QueryRunner } from 'typeorm';
import { bigint, id, instant, integer, orNull, text, word } from './support/columns.js';
import { createTable } from './support/createTable.js';

export class HistoryAndStanding1764000000005 implements MigrationInterface {
  name = 'HistoryAndStanding1764000000005';

  async up(runner: QueryRunner): Promise<void> {
    await createTable(
      runner,
      'change',
      [
        id(),
        instant('changed_at'),
        word('actor_id', 36, orNull),
        word('record_table', 40),
        word('record_id', 36),
        word('action', 60),
        text('before', orNull),
        text('after', orNull),
      ],
      { indices: [{ columnNames: ['record_table', 'record_id'] }] },
    );
    await createTable(
      runner,
      'item_standing',
      [
        id('item_id'),
        instant('computed_at'),
        integer('invested_seconds'),
        integer('repeated_seconds'),
        integer('completion_basis_points'),
        integer('budgeted_minutes'),
        integer('earned_minutes'),
        integer('completeness_basis_points'),
        integer('required_positions'),
        integer('present_positions'),
        integer('readiness_rank'),
        instant('checks_valid_until', orNull),
        integer('open_tasks'),
        integer('refuted_tasks'),
        integer('expected_remaining_minutes'),
        bigint('remaining_square_minutes'),
        text('facts'),
      ],
      {
        indices: [
          { columnNames: ['invested_seconds', 'item_id'] },
          { columnNames: ['readiness_rank', 'item_id'] },
        ],
      },
    );
    await createTable(
      runner,
      'item_hours',
      [
        id(),
        word('item_id', 36),
        word('task_kind', 20),
        word('person_id', 36),
        word('local_month', 7),
        integer('seconds'),
      ],
      {
        indices: [
          { columnNames: ['local_month', 'task_kind', 'seconds'] },
          { columnNames: ['item_id'] },
        ],
      },
    );
    await createTable(
      runner,
      'item_cost',
      [
        id('item_id'),
        word('currency', 3, { isPrimary: true }),
        bigint('price_minor_units'),
        bigint('extra_minor_units'),
        bigint('expense_minor_units'),
        bigint('total_minor_units'),
      ],
      { indices: [{ columnNames: ['currency', 'total_minor_units', 'item_id'] }] },
    );
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.dropTable('item_cost');
    await runner.dropTable('item_hours');
    await runner.dropTable('item_standing');
    await runner.dropTable('change');
  }
}
