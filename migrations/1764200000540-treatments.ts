import type { MigrationInterface, QueryRunner } from 'typeorm';
import { flag, instant, integer, kept, orNull, reference, text, word } from './support/columns.js';
import { createTable } from './support/createTable.js';

export class Treatments1764200000540 implements MigrationInterface {
  name = 'Treatments1764200000540';

  async up(runner: QueryRunner): Promise<void> {
    await createTable(
      runner,
      'treatment',
      [
        ...kept(),
        reference('item_id', 'item'),
        reference('component_id', 'component', orNull),
        reference('task_id', 'task', orNull),
        reference('finding_id', 'finding', orNull),
        word('zone', 30, orNull),
        word('surface', 200),
        word('material', 30),
        integer('dwell_minutes', orNull),
        integer('passes'),
        flag('is_rinsed'),
        word('outcome', 30),
        text('result', orNull),
        text('remains', orNull),
        instant('treated_at'),
        reference('treated_by_id', 'party', orNull),
        text('override_reason', orNull),
        reference('overridden_by_id', 'party', orNull),
      ],
      {
        indices: [{ columnNames: ['item_id', 'treated_at'] }, { columnNames: ['treated_at'] }],
        checks: {
          treatment_passes: 'passes >= 1',
          treatment_dwell: 'dwell_minutes IS NULL OR dwell_minutes >= 0',
          treatment_override: '(override_reason IS NULL) = (overridden_by_id IS NULL)',
        },
      },
    );
    await createTable(
      runner,
      'treatment_agent',
      [
        ...kept(),
        reference('treatment_id', 'treatment'),
        integer('ordinal'),
        word('kind', 30),
        word('name', 200, orNull),
        text('agent_parts', orNull),
        text('water_parts', orNull),
      ],
      { checks: { treatment_agent_dilution: '(agent_parts IS NULL) = (water_parts IS NULL)' } },
    );
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.dropTable('treatment_agent');
    await runner.dropTable('treatment');
  }
}
