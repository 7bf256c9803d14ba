import type { EntityMetadata } from 'typeorm';
import { queryInWork } from '../../db/queryInWork.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import type { ArchivedColumn } from './archivedColumn.js';
import type { ArchivedRow } from './tableRows.js';

/**
 * References of a table to itself (a shelf in a room) may point to a row that comes later: they
 * are taken out of the rows and put in when the whole table is there.
 */
export class SelfReferences {
  private readonly pending: { id: string; column: string; to: string }[] = [];
  private readonly columns: ArchivedColumn[];

  constructor(
    private readonly metadata: EntityMetadata,
    columns: readonly ArchivedColumn[],
  ) {
    this.columns = columns.filter(({ refersToItself }) => refersToItself);
  }

  takeOut(row: ArchivedRow): ArchivedRow {
    const rest = { ...row };
    for (const { name, column } of this.columns) {
      const to = rest[name];
      if (typeof to !== 'string') continue;
      this.pending.push({ id: String(row['id']), column, to });
      rest[name] = null;
    }
    return rest;
  }

  async putIn(work: UnitOfWork): Promise<void> {
    for (const { id, column, to } of this.pending.splice(0)) {
      await queryInWork(work, `UPDATE ${this.metadata.tableName} SET ${column} = ? WHERE id = ?`, [
        to,
        id,
      ]);
    }
  }
}
