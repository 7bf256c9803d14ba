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

export class ItemsAndLots1764000000002 implements MigrationInterface {
  name = 'ItemsAndLots1764000000002';

  async up(runner: QueryRunner): Promise<void> {
    await createTable(
      runner,
      'item',
      [
        ...kept(),
        word('kind', 20),
        word('inventory_number', 40),
        word('name', 200, orNull),
        reference('model_id', 'model', orNull),
        word('role', 20, orNull),
        word('serial_number', 200, orNull),
        word('made_edtf', 80, orNull),
        reference('place_id', 'place', orNull),
        reference('housed_in_id', 'item', orNull),
        text('note', orNull),
        instant('retired_at', orNull),
        text('retired_reason', orNull),
      ],
      {
        indices: [
          { columnNames: ['inventory_number'], isUnique: true },
          { columnNames: ['kind', 'id'] },
        ],
      },
    );
    await createTable(
      runner,
      'item_service',
      [
        ...kept(),
        reference('accessory_id', 'item'),
        reference('rig_id', 'item'),
        word('role', 20),
        flag('is_exclusive'),
        instant('started_at'),
        instant('ended_at', orNull),
        text('note', orNull),
      ],
      {
        indices: [
          {
            columnNames: ['accessory_id', 'rig_id', 'role'],
            isUnique: true,
            where: 'ended_at IS NULL',
          },
        ],
      },
    );
    await createTable(runner, 'item_move', [
      ...kept(),
      reference('item_id', 'item'),
      reference('from_place_id', 'place', orNull),
      reference('to_place_id', 'place', orNull),
      instant('moved_at'),
      text('note', orNull),
    ]);
    await createTable(runner, 'acquisition', [
      ...kept(),
      localDate('acquired_on'),
      reference('other_party_id', 'party', orNull),
      word('venue', 200, orNull),
      bigint('price_minor_units'),
      word('currency', 3),
      word('spread_method', 20),
      text('note', orNull),
    ]);
    await createTable(runner, 'extra_cost', [
      ...kept(),
      reference('acquisition_id', 'acquisition'),
      word('description', 200),
      bigint('amount_minor_units'),
      word('currency', 3),
    ]);
    await createTable(
      runner,
      'lot_line',
      [
        ...kept(),
        reference('acquisition_id', 'acquisition'),
        integer('ordinal'),
        reference('item_id', 'item', orNull),
        word('sundries', 200, orNull),
        word('stated_share', 40, orNull),
        bigint('stated_value_minor_units', orNull),
      ],
      {
        indices: [{ columnNames: ['item_id'], isUnique: true, where: 'item_id IS NOT NULL' }],
        checks: { line_is_something: 'item_id IS NOT NULL OR sundries IS NOT NULL' },
      },
    );
    await createTable(runner, 'claim', [
      ...kept(),
      reference('item_id', 'item', orNull),
      reference('acquisition_id', 'acquisition', orNull),
      reference('said_by_id', 'party', orNull),
      localDate('said_on', orNull),
      text('statement'),
    ]);
    await createTable(runner, 'provenance_event', [
      ...kept(),
      reference('item_id', 'item'),
      word('kind', 20),
      word('date_edtf', 80, orNull),
      localDate('earliest_on', orNull),
      localDate('latest_on', orNull),
      reference('from_party_id', 'party', orNull),
      reference('to_party_id', 'party', orNull),
      word('place_name', 200, orNull),
      word('standing', 20),
      text('evidence', orNull),
      text('note', orNull),
    ]);
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.dropTable('provenance_event');
    await runner.dropTable('claim');
    await runner.dropTable('lot_line');
    await runner.dropTable('extra_cost');
    await runner.dropTable('acquisition');
    await runner.dropTable('item_move');
    await runner.dropTable('item_service');
    await runner.dropTable('item');
  }
}
