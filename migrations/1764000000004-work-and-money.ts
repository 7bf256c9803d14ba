import type { MigrationInterface, QueryRunner } from 'typeorm';
import {
  bigint,
  id,
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

export class WorkAndMoney1764000000004 implements MigrationInterface {
  name = 'WorkAndMoney1764000000004';

  async up(runner: QueryRunner): Promise<void> {
    await createTable(runner, 'project', [
      ...kept(),
      reference('item_id', 'item'),
      word('title', 200),
      word('target_standard', 20),
      word('status', 20),
      localDate('started_on', orNull),
      instant('closed_at', orNull),
      bigint('ceiling_minor_units', orNull),
      word('ceiling_currency', 3, orNull),
      integer('ceiling_minutes', orNull),
      text('decision', orNull),
    ]);
    await createTable(runner, 'task', [
      ...kept(),
      reference('project_id', 'project'),
      integer('ordinal'),
      word('title', 200),
      word('kind', 20),
      word('status', 20),
      integer('optimistic_minutes'),
      integer('likely_minutes'),
      integer('pessimistic_minutes'),
      word('earning_rule', 30),
      integer('percent_complete', orNull),
      text('percent_evidence', orNull),
      text('hazard_kinds'),
      instant('started_at', orNull),
      instant('finished_at', orNull),
      text('note', orNull),
    ]);
    await createTable(runner, 'task_step', [
      ...kept(),
      reference('task_id', 'task'),
      integer('ordinal'),
      word('title', 200),
      integer('weight'),
      instant('done_at', orNull),
    ]);
    await createTable(
      runner,
      'task_predecessor',
      [id(), reference('task_id', 'task'), reference('predecessor_id', 'task')],
      { indices: [{ columnNames: ['task_id', 'predecessor_id'], isUnique: true }] },
    );
    await createTable(
      runner,
      'work_session',
      [
        ...kept(),
        reference('person_id', 'party'),
        reference('item_id', 'item'),
        reference('task_id', 'task', orNull),
        instant('started_at'),
        instant('ended_at', orNull),
        word('zone', 64),
        text('note', orNull),
      ],
      {
        indices: [
          { columnNames: ['item_id', 'started_at'] },
          { columnNames: ['person_id', 'started_at'] },
          {
            name: 'session_one_timer',
            columnNames: ['person_id'],
            isUnique: true,
            where: 'ended_at IS NULL',
          },
        ],
        checks: { session_in_order: 'ended_at IS NULL OR ended_at >= started_at' },
      },
    );
    await createTable(
      runner,
      'work_break',
      [
        ...kept(),
        reference('session_id', 'work_session'),
        instant('started_at'),
        instant('ended_at', orNull),
      ],
      {
        indices: [
          {
            name: 'break_one_open',
            columnNames: ['session_id'],
            isUnique: true,
            where: 'ended_at IS NULL',
          },
        ],
      },
    );
    await createTable(runner, 'expense', [
      ...kept(),
      reference('item_id', 'item'),
      reference('project_id', 'project', orNull),
      localDate('spent_on'),
      bigint('amount_minor_units'),
      word('currency', 3),
      word('description', 200),
      reference('paid_to_id', 'party', orNull),
      text('note', orNull),
    ]);
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.dropTable('expense');
    await runner.dropTable('work_break');
    await runner.dropTable('work_session');
    await runner.dropTable('task_predecessor');
    await runner.dropTable('task_step');
    await runner.dropTable('task');
    await runner.dropTable('project');
  }
}
