import type { EntityTarget } from 'typeorm';
import { v7 as uuidv7 } from 'uuid';
import type { KeptRow } from './keptRow.js';
import type { UnitOfWork } from './unitOfWork.js';

/** What a caller gives for a new record: everything but what every record has. */
export type NewRow<Entity extends { id: string }> = Omit<Entity, keyof KeptRow> & { id?: string };

/** Adds a record, with its place in the history. @returns the record as kept. */
export async function insertRow<Entity extends { id: string }>(
  work: UnitOfWork,
  entity: EntityTarget<Entity>,
  values: NewRow<Entity>,
): Promise<Entity> {
  const [row] = await insertRows(work, entity, [values]);
  return row as Entity;
}

/** Adds many records of one kind in a few statements. */
export async function insertRows<Entity extends { id: string }>(
  work: UnitOfWork,
  entity: EntityTarget<Entity>,
  many: readonly NewRow<Entity>[],
): Promise<Entity[]> {
  const metadata = work.manager.connection.getMetadata(entity);
  const isKept = metadata.findColumnWithPropertyName('version') !== undefined;
  const kept = isKept ? { version: 1, recordedAt: work.now, changedAt: work.now } : {};
  const rows = many.map((values) => ({ ...values, id: values.id ?? uuidv7(), ...kept }));
  const rowsAtOnce = Math.max(1, Math.floor(30_000 / metadata.columns.length));
  for (let start = 0; start < rows.length; start += rowsAtOnce) {
    await work.manager
      .createQueryBuilder()
      .insert()
      .into(entity)
      .values(rows.slice(start, start + rowsAtOnce) as never)
      .updateEntity(false)
      .execute();
  }
  for (const row of rows) {
    work.writes.push({ table: metadata.tableName, recordId: row.id, before: null, after: row });
  }
  return rows as unknown as Entity[];
}
