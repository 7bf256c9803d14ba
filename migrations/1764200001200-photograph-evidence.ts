import type { MigrationInterface, QueryRunner } from 'typeorm';
import { orNull, reference } from './support/columns.js';

const photograph = reference('percent_evidence_attachment_id', 'attachment', orNull);

/** A stated percentage may rest on a photograph. */
export class PhotographEvidence1764200001200 implements MigrationInterface {
  name = 'PhotographEvidence1764200001200';

  async up(runner: QueryRunner): Promise<void> {
    const { column, foreignKey, index } = photograph;
    await runner.addColumn('task', column);
    if (foreignKey) await runner.createForeignKey('task', foreignKey);
    if (index) await runner.createIndex('task', index);
  }

  async down(runner: QueryRunner): Promise<void> {
    const task = await runner.getTable('task');
    const { name } = photograph.column;
    const index = task?.indices.find(({ columnNames }) => columnNames.includes(name));
    if (index) await runner.dropIndex('task', index);
    const key = task?.foreignKeys.find(({ columnNames }) => columnNames.includes(name));
    if (key) await runner.dropForeignKey('task', key);
    await runner.dropColumn('task', name);
  }
}
