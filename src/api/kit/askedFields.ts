import { isInterfaceType, isUnionType, type GraphQLSchema } from 'graphql';
import type { Asked, AskedByType } from './lookAhead.js';

/** What is asked of one concrete type: on itself and on the interfaces that it implements. */
export function fieldsFor(
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

export const fieldsNamed = (asked: AskedByType, name: string): Asked[] =>
  Object.values(asked).flatMap((fields) =>
    Object.values(fields).filter((field) => field.name === name),
  );

export const namesBelow = (asked: AskedByType): string[] =>
  Object.values(asked).flatMap((fields) => Object.values(fields).map((field) => field.name));

/** Connections put `nodes` and `edges { node }` between a field and its rows. */
export function belowConnection(asked: AskedByType): AskedByType {
  const isConnection = Object.keys(asked).some((name) => name.endsWith('Connection'));
  if (!isConnection) return asked;
  const edges = merged(fieldsNamed(asked, 'edges'));
  return merged([...fieldsNamed(asked, 'nodes'), ...fieldsNamed(edges, 'node')]);
}

export function merged(fields: readonly Asked[]): AskedByType {
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
