import { IdColumn, CountColumn, InstantColumn } from './columns.js';

/** What every record that a person can change has in common. */
export abstract class KeptRow {
  @IdColumn()
  id!: string;

  /** Counts changes, from 1; a change that names an older version is refused. */
  @CountColumn()
  version!: number;

  @InstantColumn()
  recordedAt!: string;

  @InstantColumn()
  changedAt!: string;
}
