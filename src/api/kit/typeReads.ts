import type { ApiContext } from './apiContext.js';
import type { AskedOfRows } from './spareColumns.js';

/** A plain row that answers a type's plain fields. Interface types need `__typename`. */
export interface Row {
  id: string;
  __typename?: string;
  [field: string]: unknown;
}

/** What a relation brings for its parents. */
export interface Loaded {
  /** One value for each parent, in the parents' order: a row, a list, a page, or null. */
  values: unknown[];
  /** All rows among the values, for the relations that are asked of them in turn. */
  children: Row[];
  /** Type or interface of the children; null for plain values. */
  childType: string | null;
}

/** A field that needs a statement of its own: one for all parents, whatever their number. */
export type Relation = (
  context: ApiContext,
  parents: readonly Row[],
  args: Record<string, unknown>,
  /** Names asked for below the field: `totalCount`, `nodes` … */
  asked: ReadonlySet<string>,
  askedOfRows?: AskedOfRows,
) => Promise<Loaded>;

/** How one type of the schema is read. */
export interface TypeReads {
  typeName: string;
  /** Where its records are kept; missing for what is computed and no record. */
  table?: string;
  /** Rows for ids, in any order; ids that are not there are left out. */
  byIds(context: ApiContext, ids: readonly string[], asked?: AskedOfRows): Promise<Row[]>;
  relations: Record<string, Relation>;
}

/** How each type of the schema is read, by name. */
export type Reads = ReadonlyMap<string, TypeReads>;
