import { TableColumn, TableForeignKey, TableIndex, type TableColumnOptions } from 'typeorm';

/** A column as a migration writes it down, with what hangs on it. Frozen: change no meaning here. */
export interface Drafted {
  column: TableColumn;
  foreignKey?: TableForeignKey;
  index?: TableIndex;
}

type Options = Partial<TableColumnOptions>;
const drafted = (options: TableColumnOptions): Drafted => ({ column: new TableColumn(options) });

export const orNull: Options = { isNullable: true };

export const id = (name = 'id'): Drafted =>
  drafted({ name, type: 'varchar', length: '36', isPrimary: true });

export const word = (name: string, length: number, options: Options = {}): Drafted =>
  drafted({ name, type: 'varchar', length: String(length), ...options });

export const instant = (name: string, options: Options = {}): Drafted => word(name, 24, options);

export const localDate = (name: string, options: Options = {}): Drafted => word(name, 10, options);

export const text = (name: string, options: Options = {}): Drafted =>
  drafted({ name, type: 'text', ...options });

export const integer = (name: string, options: Options = {}): Drafted =>
  drafted({ name, type: 'integer', ...options });

export const bigint = (name: string, options: Options = {}): Drafted =>
  drafted({ name, type: 'bigint', ...options });

export const flag = (name: string): Drafted => drafted({ name, type: 'boolean' });

/** The id of a row in `table`: foreign key and index. */
export const reference = (name: string, table: string, options: Options = {}): Drafted => ({
  ...word(name, 36, options),
  foreignKey: new TableForeignKey({
    columnNames: [name],
    referencedTableName: table,
    referencedColumnNames: ['id'],
  }),
  index: new TableIndex({ columnNames: [name] }),
});

/** `id`, and what every record that can be changed has. */
export const kept = (): Drafted[] => [
  id(),
  integer('version'),
  instant('recorded_at'),
  instant('changed_at'),
];
