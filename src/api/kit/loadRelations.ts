import type { GraphQLResolveInfo, GraphQLSchema } from 'graphql';
import type { ApiContext } from './apiContext.js';
import { belowConnection, fieldsFor, fieldsNamed, merged, namesBelow } from './askedFields.js';
import { keptFor } from './keptFor.js';
import { askedBelow, type AskedByType } from './lookAhead.js';
import type { Row } from './typeReads.js';

const loadedKey = Symbol('loaded relations');
/** Keys and answers in turn: a row has a few of them, and a map for each row would cost more. */
type WithLoaded = Row & { [loadedKey]?: unknown[] };

/** A field that may have to be read: under which key it is shown, and what is asked below it. */
interface Step {
  key: string;
  name: string;
  args: Record<string, unknown>;
  names: ReadonlySet<string>;
  /** Names asked of each row, whatever its type. */
  ofRows: ReadonlySet<string>;
  below: AskedByType;
}

/**
 * Looks ahead from the root of a query and reads every relation asked for, level by level, with
 * one statement a relation. Fields then answer from memory (`loadedField`): a page costs a fixed
 * number of statements however many rows it shows.
 * @param below names of the fields between the root and the rows: `['nodes']`, `['rig']`.
 */
export async function loadRelations(
  context: ApiContext,
  info: GraphQLResolveInfo,
  typeName: string,
  rows: readonly Row[],
  below: readonly string[] = [],
): Promise<void> {
  if (rows.length === 0) return;
  await descend(context, info.schema, typeName, rows, rowsAsked(info, below));
}

/** Names asked of the rows that `loadRelations` will be given, for `spareColumns`. */
export const askedOfRows = (
  info: GraphQLResolveInfo,
  below: readonly string[] = [],
): ReadonlySet<string> => {
  const asked = rowsAsked(info, below);
  return namesKept(asked, '', () => new Set(namesBelow(asked)));
};

function rowsAsked(info: GraphQLResolveInfo, below: readonly string[]): AskedByType {
  const root = askedBelow(info);
  return rowsKept(root, below.join(' '), () => {
    let reached = root;
    for (const name of below) reached = merged(fieldsNamed(reached, name));
    return belowConnection(reached);
  });
}

const rowsKept = keptFor<AskedByType, AskedByType>();
const namesKept = keptFor<AskedByType, ReadonlySet<string>>();

/** The answer that `loadRelations` left for this field; for use in field resolvers only. */
export function loadedField(row: object, info: GraphQLResolveInfo): unknown {
  const loaded = (row as WithLoaded)[loadedKey] ?? [];
  const { key } = info.path;
  // From the end: a row that was read again has its latest answer there.
  for (let at = loaded.length - 2; at >= 0; at -= 2) if (loaded[at] === key) return loaded[at + 1];
  throw new Error(`${info.parentType.name}.${info.fieldName} was not looked ahead for`);
}

async function descend(
  context: ApiContext,
  schema: GraphQLSchema,
  typeName: string,
  rows: readonly Row[],
  asked: AskedByType,
): Promise<void> {
  for (const [concrete, group] of groupedByType(typeName, rows)) {
    const reads = context.reads.get(concrete);
    if (!reads) continue;
    const waiting: Promise<void>[] = [];
    for (const step of stepsFor(asked, concrete, () => stepsOf(schema, concrete, asked))) {
      const relation = reads.relations[step.name];
      if (!relation) continue;
      waiting.push(
        relation(context, group, step.args, step.names, step.ofRows).then((loaded) => {
          group.forEach((row, index) => {
            const value = loaded.values[index];
            const kept = row[loadedKey];
            // Written out: pushing onto an empty list would set room aside for many more.
            if (kept) kept.push(step.key, value);
            else row[loadedKey] = [step.key, value];
          });
          if (loaded.childType === null || loaded.children.length === 0) return undefined;
          return descend(context, schema, loaded.childType, loaded.children, step.below);
        }),
      );
    }
    await Promise.all(waiting);
  }
}

const stepsFor = keptFor<AskedByType, Step[]>();

const stepsOf = (schema: GraphQLSchema, concrete: string, asked: AskedByType): Step[] =>
  Object.entries(fieldsFor(schema, concrete, asked)).map(
    ([key, { name, args, fieldsByTypeName }]) => {
      const below = belowConnection(fieldsByTypeName);
      const names = new Set(namesBelow(fieldsByTypeName));
      return { key, name, args, names, ofRows: new Set(namesBelow(below)), below };
    },
  );

function groupedByType(typeName: string, rows: readonly Row[]): Map<string, WithLoaded[]> {
  const groups = new Map<string, WithLoaded[]>();
  for (const row of rows) {
    const concrete = row.__typename ?? typeName;
    const group = groups.get(concrete);
    if (group) group.push(row);
    else groups.set(concrete, [row]);
  }
  return groups;
}
