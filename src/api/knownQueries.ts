import {
  getVariableValues,
  type DocumentNode,
  type ExecutionResult,
  type GraphQLSchema,
  type OperationDefinitionNode,
} from 'graphql';
import { compileQuery, isCompiledQuery, type CompiledQuery } from 'graphql-jit';
import type { ApiContext } from './kit/apiContext.js';

/** Compiling costs as much as running a few times: it is for what is asked again and again. */
const timesBeforeCompiling = 3;
const mostTexts = 500;
const longestText = 50_000;

/** A query that was parsed, validated and compiled. */
export interface KnownQuery {
  document: DocumentNode;
  operation: OperationDefinitionNode;
  run: CompiledQuery['query'];
}

interface Met {
  asked: number;
  compiled: KnownQuery | null;
}

/** The queries of one schema that are asked again and again, as plain functions (`graphql-jit`). */
export class KnownQueries {
  readonly #schema: GraphQLSchema;
  readonly #ofDocuments = new WeakMap<DocumentNode, Map<string, Met>>();
  readonly #ofTexts = new Map<string, KnownQuery>();

  constructor(schema: GraphQLSchema) {
    this.#schema = schema;
  }

  /**
   * Notes that a query is asked, and compiles it when it has been asked often enough.
   * @param document validated against the schema
   * @param askedName the operation's name as the request had it
   */
  meet(
    text: string,
    document: DocumentNode,
    operation: OperationDefinitionNode,
    askedName: string | null,
  ): KnownQuery | null {
    let operations = this.#ofDocuments.get(document);
    if (!operations) this.#ofDocuments.set(document, (operations = new Map<string, Met>()));
    const name = operation.name?.value;
    const met = operations.get(name ?? '') ?? { asked: 0, compiled: null };
    operations.set(name ?? '', met);
    met.asked += 1;
    if (met.asked === timesBeforeCompiling) {
      const outcome = compileQuery(this.#schema, document, name, {
        disablingCapturingStackErrors: true,
      });
      if (isCompiledQuery(outcome)) met.compiled = { document, operation, run: outcome.query };
    }
    if (met.compiled && text.length <= longestText) {
      this.#keep(keyOf(text, askedName), met.compiled);
    }
    return met.compiled;
  }

  /** The query of a text that was met often enough; null for every other. */
  find(text: string, askedName: string | null): KnownQuery | null {
    return this.#ofTexts.get(keyOf(text, askedName)) ?? null;
  }

  /**
   * Runs a compiled query. Its errors are not for showing: who gets any runs the query by `graphql`,
   * whose sentences they are.
   */
  async run(
    query: KnownQuery,
    context: ApiContext,
    variables: Record<string, unknown>,
  ): Promise<ExecutionResult> {
    const definitions = query.operation.variableDefinitions ?? [];
    const { errors } = getVariableValues(this.#schema, definitions, variables);
    if (errors) return { errors };
    return query.run(undefined, context, variables);
  }

  #keep(key: string, query: KnownQuery): void {
    if (this.#ofTexts.get(key) === query) return;
    // However many there are, memory stays bounded; what is asked again is back at once.
    if (this.#ofTexts.size >= mostTexts) this.#ofTexts.clear();
    this.#ofTexts.set(key, query);
  }
}

const keyOf = (text: string, askedName: string | null): string => `${askedName ?? ''} ${text}`;
