import type { GraphQLResolveInfo } from 'graphql';
import { parseResolveInfo, type ResolveTree } from 'graphql-parse-resolve-info';

/** Names of the fields asked for directly below the field being resolved. */
export function requestedNames(info: GraphQLResolveInfo): Set<string> {
  const root = parseResolveInfo(info) as ResolveTree | null;
  return new Set(
    Object.values(root?.fieldsByTypeName ?? {}).flatMap((fields) =>
      Object.values(fields).map((field) => field.name),
    ),
  );
}
