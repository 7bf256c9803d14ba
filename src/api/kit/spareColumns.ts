import { keptFor } from './keptFor.js';
import { selectColumns } from './selectColumns.js';

/** Names of the fields asked of each row; undefined where nobody looked: then all are read. */
export type AskedOfRows = ReadonlySet<string> | undefined;

/** A select list, or one that leaves out what is not asked for. */
export type Columns = string | ((asked: AskedOfRows) => string);

export const columnsFor = (columns: Columns, asked: AskedOfRows): string =>
  typeof columns === 'string' ? columns : columns(asked);

/**
 * A select list without the columns that nobody asked for: wide rows are most of what a list costs.
 * @param spared for each column that may be left out, the other fields that are answered from it,
 *   relations among them. Columns that are not named are always read.
 */
export function spareColumns(
  table: string,
  names: readonly string[],
  spared: Readonly<Record<string, readonly string[]>>,
): (asked: AskedOfRows) => string {
  const all = selectColumns(table, names);
  const kept = keptFor<ReadonlySet<string>, string>();
  return (asked) => {
    if (asked === undefined) return all;
    return kept(asked, table, () => {
      const isAsked = (name: string): boolean =>
        asked.has(name) || (spared[name]?.some((field) => asked.has(field)) ?? true);
      return selectColumns(table, names.filter(isAsked));
    });
  };
}
