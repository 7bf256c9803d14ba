import type { MigrationInterface, QueryRunner } from 'typeorm';
import {
  flag,
  id,
  instant,
  integer,
  kept,
  orNull,
  reference,
  text,
  word,
} from './support/columns.js';
import { createTable } from './support/createTable.js';

export class PeoplePlacesModels1764000000001 implements MigrationInterface {
  name = 'PeoplePlacesModels1764000000001';

  async up(runner: QueryRunner): Promise<void> {
    await createTable(runner, 'party', [
      ...kept(),
      word('kind', 20),
      word('name', 200),
      text('contact', orNull),
      text('note', orNull),
      instant('retired_at', orNull),
    ]);
    await createTable(runner, 'collection', [
      ...kept(),
      word('name', 200),
      reference('owner_id', 'party', orNull),
      word('home_currency', 3),
      word('zone', 64),
    ]);
    await createTable(runner, 'place', [
      ...kept(),
      word('name', 200),
      reference('within_id', 'place', orNull),
      text('note', orNull),
      instant('retired_at', orNull),
    ]);
    await createTable(
      runner,
      'part_type',
      [
        ...kept(),
        word('kind', 20),
        word('designation', 200),
        text('description', orNull),
        text('ratings'),
        instant('retired_at', orNull),
      ],
      { indices: [{ columnNames: ['kind', 'designation'], isUnique: true }] },
    );
    await createTable(
      runner,
      'model',
      [
        ...kept(),
        word('item_kind', 20),
        word('maker', 200),
        word('designation', 200),
        text('description', orNull),
        integer('first_year_made', orNull),
        integer('last_year_made', orNull),
        text('note', orNull),
        instant('retired_at', orNull),
      ],
      { indices: [{ columnNames: ['maker', 'designation'], isUnique: true }] },
    );
    await createTable(
      runner,
      'model_capability',
      [
        id(),
        reference('model_id', 'model'),
        word('band', 10),
        word('mode', 20),
        integer('output_milliwatts', orNull),
      ],
      { indices: [{ columnNames: ['model_id', 'band', 'mode'], isUnique: true }] },
    );
    await createTable(
      runner,
      'model_role',
      [id(), reference('model_id', 'model'), word('role', 20), flag('is_required')],
      { indices: [{ columnNames: ['model_id', 'role'], isUnique: true }] },
    );
    await createTable(
      runner,
      'fit_out_position',
      [
        ...kept(),
        reference('model_id', 'model'),
        word('designator', 60),
        word('zone', 30),
        reference('part_type_id', 'part_type', orNull),
        flag('is_required'),
        integer('ordinal'),
        text('note', orNull),
      ],
      { indices: [{ columnNames: ['model_id', 'designator'], isUnique: true }] },
    );
    await createTable(
      runner,
      'reading_limit',
      [
        ...kept(),
        reference('part_type_id', 'part_type', orNull),
        reference('model_id', 'model', orNull),
        word('quantity', 80),
        word('tier', 20, orNull),
        text('lower', orNull),
        text('upper', orNull),
        word('unit', 40),
        text('source', orNull),
      ],
      { checks: { limit_of_one: '(part_type_id IS NULL) <> (model_id IS NULL)' } },
    );
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.dropTable('reading_limit');
    await runner.dropTable('fit_out_position');
    await runner.dropTable('model_role');
    await runner.dropTable('model_capability');
    await runner.dropTable('model');
    await runner.dropTable('part_type');
    await runner.dropTable('place');
    await runner.dropTable('collection');
    await runner.dropTable('party');
  }
}
