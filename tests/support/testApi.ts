import { graphql, type ExecutionResult, type GraphQLSchema } from 'graphql';
import { buildApiSchema } from '../../src/api/buildApiSchema.js';
import { contextOf } from '../../src/api/serveApi.js';
import type { Database } from '../../src/db/database.js';
import type { Engine } from '../../src/db/dialect.js';
import { emptyCollection, type OpenedCollection } from './openedCollection.js';

let schema: Promise<GraphQLSchema> | undefined;

/** Built once a test file. */
export const apiSchema = (): Promise<GraphQLSchema> => (schema ??= buildApiSchema());

/** The API over a collection of its own, asked without HTTP, at a time the test sets. */
export interface TestApi {
  /** A test may close it and open it again from `url`, as a restart does. */
  database: Database;
  url: string;
  /** What the API takes for now; tests move it. */
  nowMs: number;
  /** Statements that the read side has run so far. */
  statements(): number;
  /** Asks, and fails the test on a GraphQL error. @returns the data. */
  ask(query: string, variables?: Record<string, unknown>): Promise<any>;
  /** Asks, and returns errors too. */
  tryToAsk(query: string, variables?: Record<string, unknown>): Promise<ExecutionResult>;
  close(): Promise<void>;
}

/** @param collection what it is over; an empty one unless said otherwise */
export async function testApi(
  engine: Engine,
  collection: Promise<OpenedCollection> = emptyCollection(engine),
): Promise<TestApi> {
  const { url, drop, database } = await collection;
  let statements = 0;
  const { rows } = database.reader;
  database.reader.rows = (sql, parameters) => {
    statements++;
    return rows(sql, parameters) as never;
  };
  const api: TestApi = {
    database,
    url,
    nowMs: Date.parse('2026-06-01T12:00:00Z'),
    statements: () => statements,
    tryToAsk: async (source, variableValues) =>
      graphql({
        schema: await apiSchema(),
        source,
        ...(variableValues && { variableValues }),
        contextValue: contextOf(api.database, api.nowMs),
      }),
    ask: async (query, variables) => {
      const { data, errors } = await api.tryToAsk(query, variables);
      const [error] = errors ?? [];
      if (error) throw error.originalError ?? error;
      return data;
    },
    close: async () => {
      await api.database.close();
      await drop();
    },
  };
  return api;
}
