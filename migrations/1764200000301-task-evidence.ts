import type { MigrationInterface, QueryRunner } from 'typeorm';
import { orNull, reference, word } from './support/columns.js';

const evidence = [
  word('percent_evidence_kind', 20, orNull),
  reference('percent_evidence_reading_id', 'reading', orNull),
];

export class TaskEvidence1764200000301 implements MigrationInterface {
  name = 'TaskEvidence1764200000301';

  async up(runner: QueryRunner): Promise<void> {
    for (const { column, foreignKey, index } of evidence) {
      await runner.addColumn('task', column);
      if (foreignKey) await runner.createForeignKey('task', foreignKey);
      if (index) await runner.createIndex('task', index);
    }
    await runner.query(
      `UPDATE task SET percent_evidence_kind = 'NOTE' WHERE percent_evidence IS NOT NULL`,
    );
  }

  async down(runner: QueryRunner): Promise<void> {
    const task = await runner.getTable('task');
    const names = evidence.map(({ column }) => column.name);
    for (const index of task?.indices ?? []) {
      if (index.columnNames.some((name) => names.includes(name))) {
        await runner.dropIndex('task', index);
      }
    }
    for (const key of task?.foreignKeys ?? []) {
      if (key.columnNames.some((name) => names.includes(name))) {
        await runner.dropForeignKey('task', key);
      }
    }
    for (const name of names.reverse()) await runner.dropColumn('task', name);
  }
}
