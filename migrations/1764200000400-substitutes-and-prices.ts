import type { MigrationInterface, QueryRunner } from 'typeorm';
import {
  bigint,
  flag,
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

export class SubstitutesAndPrices1764200000400 implements MigrationInterface {
  name = 'SubstitutesAndPrices1764200000400';

  async up(runner: QueryRunner): Promise<void> {
    await createTable(
      runner,
      'substitution',
      [
        ...kept(),
        reference('original_id', 'part_type'),
        reference('substitute_id', 'part_type'),
        word('grade', 30),
        flag('is_mutual'),
        text('consequence', orNull),
        text('recheck', orNull),
        text('source', orNull),
        instant('retired_at', orNull),
      ],
      {
        indices: [{ columnNames: ['original_id', 'substitute_id'], isUnique: true }],
        checks: { substitution_of_two: 'original_id <> substitute_id' },
      },
    );
    await createTable(
      runner,
      'price_note',
      [
        ...kept(),
        reference('part_type_id', 'part_type', orNull),
        reference('model_id', 'model', orNull),
        word('kind', 20),
        localDate('noted_on'),
        bigint('amount_minor_units'),
        word('currency', 3),
        integer('quantity'),
        word('seen_at', 200),
        text('note', orNull),
        instant('struck_at', orNull),
      ],
      {
        checks: {
          price_note_of_one: '(part_type_id IS NULL) <> (model_id IS NULL)',
          price_note_quantity: 'quantity > 0',
        },
      },
    );
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.dropTable('price_note');
    await runner.dropTable('substitution');
  }
}
