import { TableColumn, type MigrationInterface, type QueryRunner } from 'typeorm';
import {
  bigint,
  flag,
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

export class PlansAndForecasts1764200000200 implements MigrationInterface {
  name = 'PlansAndForecasts1764200000200';

  async up(runner: QueryRunner): Promise<void> {
    await runner.addColumn(
      'task',
      new TableColumn({
        name: 'estimate_distribution',
        type: 'varchar',
        length: '20',
        default: "'PERT_BETA'",
      }),
    );
    await createTable(
      runner,
      'project_plan',
      [
        ...kept(),
        reference('project_id', 'project'),
        integer('priority', orNull),
        reference('worked_by_id', 'party', orNull),
        integer('correlation_percent'),
        word('seed', 60, orNull),
      ],
      { indices: [{ name: 'plan_one_a_project', columnNames: ['project_id'], isUnique: true }] },
    );
    await createTable(runner, 'away', [
      ...kept(),
      reference('person_id', 'party'),
      localDate('from_on'),
      localDate('until_on'),
      flag('is_yearly'),
      text('note', orNull),
      instant('withdrawn_at', orNull),
    ]);
    await createTable(runner, 'baseline', [
      ...kept(),
      reference('project_id', 'project'),
      instant('kept_at'),
      localDate('starts_on'),
      integer('minutes_per_week'),
      bigint('budget_minor_units', orNull),
      word('budget_currency', 3, orNull),
      text('note', orNull),
    ]);
    await createTable(runner, 'baseline_task', [
      id(),
      reference('baseline_id', 'baseline'),
      reference('task_id', 'task'),
      integer('ordinal'),
      integer('budget_minutes'),
      localDate('planned_start_on'),
      localDate('planned_finish_on'),
    ]);
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.dropTable('baseline_task');
    await runner.dropTable('baseline');
    await runner.dropTable('away');
    await runner.dropTable('project_plan');
    await runner.dropColumn('task', 'estimate_distribution');
  }
}
