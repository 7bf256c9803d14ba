import { listParameter, type Dialect } from '../../db/dialect.js';
import { columnsFor, type Columns } from './spareColumns.js';
import type { Loaded, Relation, Row } from './typeReads.js';

/** A field that names one other record: `place`, read by the ids in the parents' `key`. */
export const one =
  (typeName: string, key: string): Relation =>
  async (context, parents, _args, _asked, askedOfRows) => {
    const ids = new Set<string>();
    for (const parent of parents) {
      const id = parent[key];
      if (typeof id === 'string') ids.add(id);
    }
    const found = await context.reads.get(typeName)?.byIds(context, [...ids], askedOfRows);
    const children = ids.size === 0 || !found ? [] : found;
    const byId = new Map(children.map((row) => [row.id, row]));
    const values = parents.map((parent) => byId.get(parent[key] as string) ?? null);
    return { values, children, childType: typeName };
  };

/**
 * A field that lists what cannot grow without bound.
 * @param columns as `selectColumns` makes them, from `table`.
 * @param parentColumn column of `table` with the parent's id.
 */
export const list =
  (
    typeName: string,
    options: {
      table: string;
      columns: Columns;
      parentColumn: string;
      orderBy: string;
      where?: string;
    },
  ): Relation =>
  async (context, parents, _args, _asked, askedOfRows): Promise<Loaded> => {
    const { dialect } = context.database.reader;
    const { table, columns, parentColumn, orderBy, where } = options;
    const children = await context.database.reader.rows<Row>(
      `SELECT ${columnsFor(columns, askedOfRows)}${withParent(parents, `${table}.${parentColumn}`)}
       FROM ${table} WHERE ${ofParents(dialect, parents, `${table}.${parentColumn}`)}${
         where ? ` AND ${where}` : ''
       } ORDER BY ${orderBy}`,
      [parentsParameter(parents)],
    );
    return { values: grouped(parents, children), children, childType: typeName };
  };

/** What `grouped` needs in a select list: nothing, where all rows are of one parent. */
export const withParent = (parents: readonly Row[], column: string): string =>
  parents.length === 1 ? '' : `, ${column} AS "parentId"`;

/** The condition that rows are of these parents; bound as ONE parameter, `parentsParameter`. */
export const ofParents = (dialect: Dialect, parents: readonly Row[], column: string): string =>
  parents.length === 1 ? `${column} = ?` : dialect.isAnyOf(column);

export const parentsParameter = (parents: readonly Row[]): string => {
  const [first] = parents;
  return first && parents.length === 1 ? first.id : listParameter(parents.map(({ id }) => id));
};

/**
 * The children of each parent, in the order in which they were read.
 * @param children of these parents alone
 */
export function grouped(parents: readonly Row[], children: readonly Row[]): Row[][] {
  if (parents.length === 1) return [[...children]];
  const lists = new Map<unknown, Row[]>(parents.map((parent) => [parent.id, []]));
  for (const child of children) lists.get(child['parentId'])?.push(child);
  return parents.map((parent) => lists.get(parent.id) ?? []);
}
