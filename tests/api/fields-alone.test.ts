import {
  getNamedType,
  isInterfaceType,
  isLeafType,
  isObjectType,
  isRequiredArgument,
  type GraphQLField,
  type GraphQLInterfaceType,
  type GraphQLObjectType,
  type GraphQLOutputType,
} from 'graphql';
import { describe, expect, it } from 'vitest';
import { demoCollection } from '../support/demoCollection.js';
import { apiSchema, testApi } from '../support/testApi.js';

type Shown = GraphQLObjectType | GraphQLInterfaceType;
type Field = GraphQLField<unknown, unknown>;

/** Where a type is met: what is written before and after its fields, and the way to its rows. */
interface Place {
  type: Shown;
  before: string;
  after: string;
  path: readonly string[];
}

const deepest = 4;
/** Reckoned as a whole, from no columns of their own, and dear. */
const leftOut = new Set([
  'calculators',
  'costToCome',
  'dossier',
  'earnedValue',
  'forecast',
  'goingOn',
  'workQueue',
]);

const shownType = (type: GraphQLOutputType): Shown | null => {
  const named = getNamedType(type);
  return isObjectType(named) || isInterfaceType(named) ? named : null;
};
const fieldsOf = (type: Shown): Field[] =>
  Object.values(type.getFields()).filter(
    ({ args, name }) => !args.some(isRequiredArgument) && !leftOut.has(name),
  );
const leavesOf = (type: Shown): string =>
  fieldsOf(type)
    .filter((field) => isLeafType(getNamedType(field.type)))
    .map(({ name }) => name)
    .join(' ');
const nodesOf = (type: Shown): Shown | null =>
  type.name.endsWith('Connection') ? shownType(type.getFields()['nodes']?.type ?? type) : null;

function selection({ name, type }: Field): string {
  const below = shownType(type);
  if (!below) return name;
  const nodes = nodesOf(below);
  return nodes
    ? `${name} { nodes { __typename ${leavesOf(nodes)} } }`
    : `${name} { __typename ${leavesOf(below)} }`;
}

function placesBelow({ type, before, after, path }: Place): Place[] {
  return fieldsOf(type).flatMap(({ name, type: answer }): Place[] => {
    const below = shownType(answer);
    if (!below) return [];
    const nodes = nodesOf(below);
    return nodes
      ? [
          {
            type: nodes,
            before: `${before} ${name}(first: 6) { nodes {`,
            after: `} } ${after}`,
            path: [...path, name, 'nodes'],
          },
        ]
      : [
          {
            type: below,
            before: `${before} ${name} {`,
            after: `} ${after}`,
            path: [...path, name],
          },
        ];
  });
}

const rowsAt = (answer: unknown, path: readonly string[]): any[] =>
  path.reduce<any[]>((rows, name) => rows.flatMap((row) => row?.[name] ?? []), [answer]);

// Rows are read without the columns that nobody asked for (`spareColumns`) and only with the
// relations that were looked ahead for: what a field needs must be read for it alone, too.
describe('every field of the API, on the demo collection', () => {
  it('answers alone as it does beside all others', async () => {
    const api = await testApi('sqlite', demoCollection('sqlite'));
    const query = (await apiSchema()).getQueryType();
    const met = new Set<string>();
    const otherwise: string[] = [];
    let places: Place[] = query
      ? placesBelow({ type: query, before: '', after: '', path: [] })
      : [];
    for (let depth = 0; depth < deepest; depth++) {
      const next: Place[] = [];
      for (const place of places) {
        const { type, before, after, path } = place;
        if (met.has(type.name)) continue;
        const ask = async (fields: string) =>
          rowsAt(await api.ask(`{ ${before} ${fields} ${after} }`), path);
        const fields = fieldsOf(type);
        const rows = await ask(fields.map(selection).join(' '));
        // Perhaps it is met elsewhere with something in it.
        if (rows.length === 0) continue;
        met.add(type.name);
        for (const field of fields) {
          const alone = (await ask(selection(field))).map((row) => row[field.name]);
          const beside = rows.map((row) => row[field.name]);
          if (JSON.stringify(alone) !== JSON.stringify(beside)) {
            otherwise.push(`${type.name}.${field.name}`);
          }
        }
        next.push(...placesBelow(place));
      }
      places = next;
    }
    expect(otherwise).toEqual([]);
    expect(met.size).toBeGreaterThan(100);
    await api.close();
  }, 120_000);
});
