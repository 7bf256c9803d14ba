import { isInterfaceType, isUnionType, type GraphQLResolveInfo, type GraphQLSchema } from 'graphql';
import { parseResolveInfo } from 'graphql-parse-resolve-info';
import type { ApiContext } from './apiContext.js';
import type { Row } from './typeReads.js';

/** A field as asked for: its name, arguments, and what is asked below it, by type. */
interface Asked {
  name: string;
  args: Record<string, unknown>;
  fieldsByTypeName: AskedByType;
}
type AskedByType = Record<string, Record<string, Asked>>;

const loadedKey = Symbol('loaded relations');
type WithLoaded = Row & { [loadedKey]?: Map<string, unknown> };

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
  const root = parseResolveInfo(info) as unknown as Asked | null;
  if (!root || rows.length === 0) return;
  let asked = root.fieldsByTypeName;
  for (const name of below) asked = merged(fieldsNamed(asked, name));
  await descend(context, info.schema, typeName, rows, belowConnection(asked));
}

/** The answer that `loadRelations` left for this field; for use in field resolvers only. */
export function loadedField(row: object, info: GraphQLResolveInfo): unknown {
  const loaded = (row as WithLoaded)[loadedKey];
  const key = String(info.path.key);
  if (!loaded?.has(key)) {
    throw new Error(`${info.parentType.name}.${info.fieldName} was not looked ahead for`);
  }
  return loaded.get(key);
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
    const fields = fieldsFor(schema, concrete, asked);
    await Promise.all(
      Object.entries(fields).map(async ([key, field]) => {
        const relation = reads.relations[field.name];
        if (!relation) return;
        const names = new Set(namesBelow(field.fieldsByTypeName));
        const loaded = await relation(context, group, field.args, names);
        group.forEach((row: WithLoaded, index) => {
          (row[loadedKey] ??= new Map()).set(key, loaded.values[index]);
        });
        if (loaded.childType === null || loaded.children.length === 0) return;
        const below = belowConnection(field.fieldsByTypeName);
        await descend(context, schema, loaded.childType, loaded.children, below);
      }),
    );
  }
}

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

/** What is asked of one concrete type: on itself and on the interfaces that it implements. */
function fieldsFor(
  schema: GraphQLSchema,
  concrete: string,
  asked: AskedByType,
): Record<string, Asked> {
  const applicable = Object.keys(asked).filter((name) => {
    const type = schema.getType(name);
    return name === concrete || isInterfaceType(type) || isUnionType(type);
  });
  return applicable.reduce<Record<string, Asked>>((fields, name) => {
    for (const [key, field] of Object.entries(asked[name] ?? {})) {
      const twin = fields[key];
      fields[key] = twin ? { ...field, fieldsByTypeName: merged([twin, field]) } : field;
    }
    return fields;
  }, {});
}

const fieldsNamed = (asked: AskedByType, name: string): Asked[] =>
  Object.values(asked).flatMap((fields) =>
    Object.values(fields).filter((field) => field.name === name),
  );

const namesBelow = (asked: AskedByType): string[] =>
  Object.values(asked).flatMap((fields) => Object.values(fields).map((field) => field.name));

/** Connections put `nodes` and `edges { node }` between a field and its rows. */
function belowConnection(asked: AskedByType): AskedByType {
  const isConnection = Object.keys(asked).some((name) => name.endsWith('Connection'));
  if (!isConnection) return asked;
  const edges = merged(fieldsNamed(asked, 'edges'));
  return merged([...fieldsNamed(asked, 'nodes'), ...fieldsNamed(edges, 'node')]);
}

function merged(fields: readonly Asked[]): AskedByType {
  const result: AskedByType = {};
  for (const { fieldsByTypeName } of fields) {
    for (const [type, below] of Object.entries(fieldsByTypeName)) {
      const known = (result[type] ??= {});
      for (const [key, field] of Object.entries(below)) {
        const twin = known[key];
        known[key] = twin ? { ...field, fieldsByTypeName: merged([twin, field]) } : field;
      }
    }
  }
  return result;
}
