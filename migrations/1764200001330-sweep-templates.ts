import type { MigrationInterface, QueryRunner } from 'typeorm';
import { instant, kept, orNull, reference, text, word } from './support/columns.js';
import { createTable } from './support/createTable.js';

const template = reference('template_id', 'sweep_template', orNull);
const planned = text('planned_designators', orNull);

/** What is read in one go, under a name; and what a sweep taken with it was to read. */
export class SweepTemplates1764200001330 implements MigrationInterface {
  name = 'SweepTemplates1764200001330';

  async up(runner: QueryRunner): Promise<void> {
    await createTable(
      runner,
      'sweep_template',
      [
        ...kept(),
        reference('model_id', 'model'),
        word('name', 200),
        word('name_key', 600),
        text('designators'),
        text('quantities'),
        word('tier', 20),
        word('instrument', 200, orNull),
        word('method', 200, orNull),
        text('note', orNull),
        instant('retired_at', orNull),
      ],
      { indices: [{ columnNames: ['model_id', 'name_key'], isUnique: true }] },
    );
    await runner.addColumn('sweep', template.column);
    await runner.addColumn('sweep', planned.column);
    if (template.foreignKey) await runner.createForeignKey('sweep', template.foreignKey);
    if (template.index) await runner.createIndex('sweep', template.index);
  }

  async down(runner: QueryRunner): Promise<void> {
    const sweep = await runner.getTable('sweep');
    const { name } = template.column;
    const index = sweep?.indices.find(({ columnNames }) => columnNames.includes(name));
    if (index) await runner.dropIndex('sweep', index);
    const key = sweep?.foreignKeys.find(({ columnNames }) => columnNames.includes(name));
    if (key) await runner.dropForeignKey('sweep', key);
    await runner.dropColumn('sweep', planned.column.name);
    await runner.dropColumn('sweep', name);
    await runner.dropTable('sweep_template');
  }
}
