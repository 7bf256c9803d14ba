import type { MigrationInterface, QueryRunner } from 'typeorm';
import { flag, instant, integer, kept, orNull, reference, text, word } from './support/columns.js';
import { createTable } from './support/createTable.js';

export class IntakeAndParts1764000000003 implements MigrationInterface {
  name = 'IntakeAndParts1764000000003';

  async up(runner: QueryRunner): Promise<void> {
    await createTable(runner, 'inspection', [
      ...kept(),
      reference('item_id', 'item'),
      instant('inspected_at'),
      reference('inspector_id', 'party', orNull),
      text('note', orNull),
    ]);
    await createTable(
      runner,
      'fit_out_check',
      [
        ...kept(),
        reference('inspection_id', 'inspection'),
        reference('item_id', 'item'),
        reference('position_id', 'fit_out_position'),
        word('state', 10),
        instant('checked_at'),
        text('note', orNull),
      ],
      { indices: [{ columnNames: ['inspection_id', 'position_id'], isUnique: true }] },
    );
    await createTable(runner, 'finding', [
      ...kept(),
      reference('item_id', 'item'),
      reference('inspection_id', 'inspection', orNull),
      word('zone', 30),
      word('severity', 20),
      text('note'),
      instant('seen_at'),
      word('status', 20),
      instant('settled_at', orNull),
      text('settled_note', orNull),
    ]);
    await createTable(runner, 'hazard', [
      ...kept(),
      reference('item_id', 'item'),
      reference('finding_id', 'finding', orNull),
      word('kind', 40),
      text('note', orNull),
      instant('raised_at'),
      instant('cleared_at', orNull),
      text('cleared_by_check', orNull),
      reference('cleared_by_id', 'party', orNull),
    ]);
    await createTable(runner, 'component', [
      ...kept(),
      reference('part_type_id', 'part_type', orNull),
      word('marking', 200, orNull),
      word('date_code', 40, orNull),
      word('origin', 20),
      text('note', orNull),
    ]);
    await createTable(
      runner,
      'fitting',
      [
        ...kept(),
        reference('component_id', 'component'),
        reference('item_id', 'item'),
        word('designator', 60),
        instant('fitted_at'),
        instant('removed_at', orNull),
        word('disposition', 20, orNull),
        text('note', orNull),
      ],
      {
        indices: [
          {
            name: 'fitting_one_part',
            columnNames: ['item_id', 'designator'],
            isUnique: true,
            where: 'removed_at IS NULL',
          },
          {
            name: 'fitting_one_place',
            columnNames: ['component_id'],
            isUnique: true,
            where: 'removed_at IS NULL',
          },
        ],
      },
    );
    await createTable(
      runner,
      'reading',
      [
        ...kept(),
        reference('component_id', 'component', orNull),
        reference('item_id', 'item', orNull),
        word('quantity', 80),
        text('value'),
        word('unit', 40),
        word('tier', 20),
        word('instrument', 200, orNull),
        word('method', 200, orNull),
        instant('taken_at'),
        reference('taken_by_id', 'party', orNull),
        text('note', orNull),
      ],
      { checks: { reading_of_one: '(component_id IS NULL) <> (item_id IS NULL)' } },
    );
    await createTable(runner, 'final_check', [
      ...kept(),
      reference('item_id', 'item'),
      word('procedure', 120),
      instant('checked_at'),
      flag('is_passed'),
      integer('valid_days'),
      reference('checked_by_id', 'party', orNull),
      text('note', orNull),
    ]);
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.dropTable('final_check');
    await runner.dropTable('reading');
    await runner.dropTable('fitting');
    await runner.dropTable('component');
    await runner.dropTable('hazard');
    await runner.dropTable('finding');
    await runner.dropTable('fit_out_check');
    await runner.dropTable('inspection');
  }
}
