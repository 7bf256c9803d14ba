import type { EntityMetadata } from 'typeorm';

/** A column as archives and CSV files name and write it. */
export interface ArchivedColumn {
  /** `inventoryNumber` */
  name: string;
  /** `inventory_number` */
  column: string;
  holds: 'text' | 'count' | 'largeCount' | 'flag' | 'json';
  /** Characters at the most; null for running text and for what is no text. */
  longest: number | null;
  mayBeNull: boolean;
  /** What it holds where nothing was said; undefined where something must be. */
  usual: unknown;
  /** It names another row of the same table. */
  refersToItself: boolean;
}

const kinds: Record<string, ArchivedColumn['holds']> = {
  integer: 'count',
  bigint: 'largeCount',
  boolean: 'flag',
  'simple-json': 'json',
};

/** The columns of a table, in the order in which the entity declares them. */
export const archivedColumns = (metadata: EntityMetadata): ArchivedColumn[] =>
  metadata.columns.map((column) => ({
    name: column.propertyName,
    column: column.databaseName,
    holds: kinds[String(column.type)] ?? 'text',
    longest: Number(column.length) || null,
    mayBeNull: column.isNullable,
    usual: column.isNullable ? null : (column.default as unknown),
    refersToItself: metadata.foreignKeys.some(
      ({ columns, referencedEntityMetadata }) =>
        columns.includes(column) && referencedEntityMetadata.tableName === metadata.tableName,
    ),
  }));
