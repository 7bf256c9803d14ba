import type { MigrationInterface, QueryRunner } from 'typeorm';
import { kept, orNull, reference, text } from './support/columns.js';
import { createTable } from './support/createTable.js';

/** What tells one item from every other of its kind: asked for by insurers and the police. */
export class ObjectIdentity1764200000600 implements MigrationInterface {
  name = 'ObjectIdentity1764200000600';

  async up(runner: QueryRunner): Promise<void> {
    const item = reference('item_id', 'item');
    delete item.index;
    await createTable(
      runner,
      'item_identity',
      [
        ...kept(),
        item,
        text('object_type', orNull),
        text('materials', orNull),
        text('measurements', orNull),
        text('inscriptions', orNull),
        text('distinguishing_features', orNull),
        text('title', orNull),
        text('subject', orNull),
        text('maker', orNull),
        text('place_of_origin', orNull),
        text('related_papers', orNull),
        text('description', orNull),
        text('not_applicable'),
      ],
      { indices: [{ columnNames: ['item_id'], isUnique: true }] },
    );
  }

  async down(runner: QueryRunner): Promise<void> {
    await runner.dropTable('item_identity');
  }
}
