import type { MigrationInterface, QueryRunner } from 'typeorm';
import { id, integer, reference } from './support/columns.js';
import { createTable } from './support/createTable.js';

export class TaskParts1764200000303 implements MigrationInterface {
  name = 'TaskParts1764200000303';

  async up(runner: QueryRunner): Promise<void> {
    await createTable(
      runner,
      'task_part',
      [
        id(),
        reference('task_id', 'task'),
        reference('part_type_id', 'part_type'),
        integer('quantity'),
      ],
      { indices: [{ columnNames: ['task_id', 'part_type_id'], isUnique: true }] },
    );
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.dropTable('task_part');
  }
}
