import type { MigrationInterface, QueryRunner } from 'typeorm';
import { instant, kept, orNull, reference, text, word } from './support/columns.js';
import { createTable } from './support/createTable.js';

export class TaskTemplates1764200000302 implements MigrationInterface {
  name = 'TaskTemplates1764200000302';

  async up(runner: QueryRunner): Promise<void> {
    await createTable(runner, 'task_template', [
      ...kept(),
      word('title', 200),
      text('description', orNull),
      word('item_kind', 20, orNull),
      reference('source_project_id', 'project', orNull),
      text('tasks'),
      instant('retired_at', orNull),
    ]);
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.dropTable('task_template');
  }
}
