import type { EntityTarget, ObjectLiteral } from 'typeorm';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { archivedColumns, type ArchivedColumn } from './archivedColumn.js';
import { refuseRow } from './refuseRow.js';
import { SelfReferences } from './selfReferences.js';
import type { ArchivedRow } from './tableRows.js';

const rowsAtOnce = 250;

/** Puts the rows of one table of an archive into the database, as they are and without history. */
export class TableLoader {
  count = 0;
  private batch: ArchivedRow[] = [];
  private readonly columns: readonly ArchivedColumn[];
  private readonly selfReferences: SelfReferences;

  constructor(
    private readonly work: UnitOfWork,
    private readonly entity: EntityTarget<ObjectLiteral>,
    readonly table: string,
    /** Written before some of the columns were: these then hold what they usually do. */
    private readonly isOlder: boolean,
  ) {
    const metadata = work.manager.connection.getMetadata(entity);
    this.columns = archivedColumns(metadata);
    this.selfReferences = new SelfReferences(metadata, this.columns);
  }

  async add(row: ArchivedRow): Promise<void> {
    this.count++;
    const whole = this.isOlder ? { ...this.usualValues(), ...row } : row;
    refuseRow(this.table, whole, this.columns, this.count);
    this.batch.push(this.selfReferences.takeOut(whole));
    if (this.batch.length === rowsAtOnce) await this.insert();
  }

  async finish(): Promise<void> {
    await this.insert();
    await this.selfReferences.putIn(this.work);
  }

  private usualValues(): ArchivedRow {
    return Object.fromEntries(this.columns.map(({ name, usual }) => [name, usual]));
  }

  private async insert(): Promise<void> {
    const rows = this.batch;
    this.batch = [];
    if (rows.length === 0) return;
    await this.work.manager
      .createQueryBuilder()
      .insert()
      .into(this.entity)
      .values(rows)
      .updateEntity(false)
      .execute();
  }
}
