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

/** Exchange rates, price indexes, value notes, planned costs, ceilings of months and years. */
export class Worth1764200001000 implements MigrationInterface {
  name = 'Worth1764200001000';

  async up(runner: QueryRunner): Promise<void> {
    await createTable(
      runner,
      'exchange_rate',
      [
        ...kept(),
        word('from_currency', 3),
        word('to_currency', 3),
        localDate('rated_on'),
        text('rate'),
        word('source', 200),
        instant('struck_at', orNull),
      ],
      { indices: [{ columnNames: ['from_currency', 'to_currency', 'rated_on'], isUnique: true }] },
    );
    await createTable(runner, 'price_index', [
      ...kept(),
      word('name', 200),
      word('currency', 3),
      word('source', 200),
      instant('struck_at', orNull),
    ]);
    await createTable(
      runner,
      'price_index_point',
      [...kept(), reference('index_id', 'price_index'), word('period', 7), text('value')],
      { indices: [{ columnNames: ['index_id', 'period'], isUnique: true }] },
    );
    await createTable(
      runner,
      'value_note',
      [
        ...kept(),
        reference('model_id', 'model', orNull),
        reference('item_id', 'item', orNull),
        word('basis', 20),
        word('standard', 20),
        localDate('valued_on'),
        bigint('low_minor_units', orNull),
        bigint('likely_minor_units'),
        bigint('high_minor_units', orNull),
        word('currency', 3),
        word('source', 200),
        text('note', orNull),
        instant('struck_at', orNull),
      ],
      { checks: { value_note_of_one: '(model_id IS NULL) <> (item_id IS NULL)' } },
    );
    await createTable(runner, 'planned_cost', [
      ...kept(),
      reference('project_id', 'project'),
      word('kind', 20),
      word('description', 200),
      bigint('optimistic_minor_units'),
      bigint('likely_minor_units'),
      bigint('pessimistic_minor_units'),
      word('currency', 3),
      word('needed_from', 20, orNull),
      instant('settled_at', orNull),
      text('note', orNull),
    ]);
    await this.createStatements(runner);
  }

  /** What only the owner can say: terms, ceilings, an item's prospects, ways to find out more. */
  private async createStatements(runner: QueryRunner): Promise<void> {
    const item = reference('item_id', 'item');
    delete item.index;
    await createTable(
      runner,
      'item_outlook',
      [
        ...kept(),
        item,
        word('present_standard', 20, orNull),
        integer('success_percent', orNull),
        bigint('premium_minor_units', orNull),
        word('premium_currency', 3, orNull),
        text('premium_reason', orNull),
      ],
      { indices: [{ columnNames: ['item_id'], isUnique: true }] },
    );
    await createTable(runner, 'worth_terms', [
      ...kept(),
      bigint('hour_rate_minor_units', orNull),
      word('hour_rate_currency', 3, orNull),
      integer('sale_cost_percent'),
      integer('part_effort_minutes'),
      integer('usable_parts_percent'),
      integer('spare_use_percent'),
    ]);
    await createTable(
      runner,
      'spending_ceiling',
      [...kept(), word('period', 10), bigint('amount_minor_units', orNull), word('currency', 3)],
      { indices: [{ columnNames: ['period'], isUnique: true }] },
    );
    await createTable(runner, 'inquiry', [
      ...kept(),
      reference('project_id', 'project'),
      word('kind', 20),
      word('description', 200),
      word('resolves', 20),
      reference('planned_cost_id', 'planned_cost', orNull),
      reference('part_type_id', 'part_type', orNull),
      bigint('cost_minor_units'),
      word('cost_currency', 3),
      integer('minutes'),
      instant('done_at', orNull),
      text('outcome', orNull),
    ]);
  }

  async down(runner: QueryRunner): Promise<void> {
    for (const table of [
      'inquiry',
      'spending_ceiling',
      'worth_terms',
      'item_outlook',
      'planned_cost',
      'value_note',
      'price_index_point',
      'price_index',
      'exchange_rate',
    ]) {
      await runner.dropTable(table);
    }
  }
}
