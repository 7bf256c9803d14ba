import type { MigrationInterface, QueryRunner } from 'typeorm';
import {
  bigint,
  integer,
  kept,
  localDate,
  orNull,
  reference,
  text,
  word,
} from './support/columns.js';
import { createTable } from './support/createTable.js';

/** Items that are lent, lost, stolen or gone for good: the record of each stays. */
export class OutOfHand1764200000602 implements MigrationInterface {
  name = 'OutOfHand1764200000602';

  async up(runner: QueryRunner): Promise<void> {
    const indexed = (where: string) => ({
      indices: [{ columnNames: ['item_id'], isUnique: true, where }],
    });
    // Its own index has a condition (below).
    const item = () => {
      const plain = reference('item_id', 'item');
      delete plain.index;
      return plain;
    };
    await createTable(
      runner,
      'loan',
      [
        ...kept(),
        item(),
        reference('borrower_id', 'party'),
        localDate('lent_on'),
        localDate('due_on', orNull),
        localDate('returned_on', orNull),
        word('place_name', 200, orNull),
        text('purpose', orNull),
        text('note', orNull),
      ],
      indexed('returned_on IS NULL'),
    );
    await createTable(
      runner,
      'item_loss',
      [
        ...kept(),
        item(),
        word('kind', 20),
        localDate('missed_on'),
        text('circumstances', orNull),
        word('reported_to', 200, orNull),
        word('report_number', 200, orNull),
        localDate('found_on', orNull),
        text('note', orNull),
      ],
      indexed('found_on IS NULL'),
    );
    await createTable(runner, 'disposal', [
      ...kept(),
      word('kind', 20),
      localDate('disposed_on'),
      reference('to_party_id', 'party', orNull),
      word('venue', 200, orNull),
      bigint('price_minor_units'),
      word('currency', 3),
      text('note', orNull),
    ]);
    await createTable(runner, 'disposal_line', [
      ...kept(),
      reference('disposal_id', 'disposal'),
      integer('ordinal'),
      reference('item_id', 'item'),
      bigint('price_minor_units'),
    ]);
    await createTable(runner, 'disposal_cost', [
      ...kept(),
      reference('disposal_id', 'disposal'),
      word('description', 200),
      bigint('amount_minor_units'),
      word('currency', 3),
    ]);
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.dropTable('disposal_cost');
    await runner.dropTable('disposal_line');
    await runner.dropTable('disposal');
    await runner.dropTable('item_loss');
    await runner.dropTable('loan');
  }
}
