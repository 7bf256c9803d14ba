import type { MigrationInterface, QueryRunner } from 'typeorm';
import { flag, instant, kept, orNull, reference, text, word } from './support/columns.js';
import { createTable } from './support/createTable.js';

export class BringUp1764200000900 implements MigrationInterface {
  name = 'BringUp1764200000900';

  async up(runner: QueryRunner): Promise<void> {
    await createTable(
      runner,
      'bring_up',
      [
        ...kept(),
        word('key', 100),
        word('digest', 64),
        reference('item_id', 'item'),
        text('procedure'),
        word('status', 20),
        instant('started_at'),
        instant('ended_at', orNull),
        reference('started_by_id', 'party', orNull),
        reference('final_check_id', 'final_check', orNull),
        text('reason', orNull),
        text('note', orNull),
      ],
      { indices: [{ columnNames: ['key'], isUnique: true }] },
    );
    await createTable(
      runner,
      'bring_up_step',
      [
        ...kept(),
        word('key', 100),
        word('digest', 64),
        reference('bring_up_id', 'bring_up'),
        word('step_key', 60),
        text('holds'),
        text('reading_ids'),
        instant('done_at'),
        reference('done_by_id', 'party', orNull),
        reference('finding_id', 'finding', orNull),
        text('note', orNull),
      ],
      { indices: [{ columnNames: ['key'], isUnique: true }] },
    );
    await createTable(runner, 'session_hazard', [
      ...kept(),
      reference('session_id', 'work_session'),
      reference('hazard_id', 'hazard'),
      flag('is_shown'),
    ]);
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.dropTable('session_hazard');
    await runner.dropTable('bring_up_step');
    await runner.dropTable('bring_up');
  }
}
