export type Engine = 'sqlite' | 'postgres';

/** The few places where the two engines' SQL differs. Statements use `?` for parameters. */
export interface Dialect {
  engine: Engine;
  /** `expression` is one of a list, bound as ONE parameter: `listParameter(values)`. */
  isAnyOf(expression: string): string;
  /** A list as a table to join, one text a row in `value`; bound as ONE parameter as above. */
  eachText: string;
  /** Full-text condition on `item_text`; bound as ONE parameter: `searchParameter(tokens)`. */
  matchesText: string;
}

/** Any number of texts as one bound parameter, so that a statement is prepared once. */
export const listParameter = (values: readonly string[]): string => JSON.stringify(values);

export const sqliteDialect: Dialect = {
  engine: 'sqlite',
  isAnyOf: (expression) => `${expression} IN (SELECT value FROM json_each(?))`,
  eachText: '(SELECT value FROM json_each(?))',
  matchesText:
    'item.id IN (SELECT item_id FROM item_text WHERE rowid IN (SELECT rowid FROM item_text_index WHERE item_text_index MATCH ?))',
};

export const postgresDialect: Dialect = {
  engine: 'postgres',
  isAnyOf: (expression) => `${expression} IN (SELECT jsonb_array_elements_text(CAST(? AS jsonb)))`,
  eachText: '(SELECT jsonb_array_elements_text(CAST(? AS jsonb)) AS value)',
  matchesText:
    "item.id IN (SELECT item_id FROM item_text WHERE to_tsvector('simple', body) @@ to_tsquery('simple', ?))",
};
