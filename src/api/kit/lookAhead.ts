import { Kind, visit, type FieldNode, type GraphQLResolveInfo } from 'graphql';
import { parseResolveInfo } from 'graphql-parse-resolve-info';

/** A field as asked for: its name, arguments, and what is asked below it, by type. */
export interface Asked {
  name: string;
  args: Record<string, unknown>;
  fieldsByTypeName: AskedByType;
}
export type AskedByType = Record<string, Record<string, Asked>>;

interface Known {
  /** Variables that decide what is asked below the field. */
  variableNames: readonly string[];
  byValues: Map<string, AskedByType>;
}

/**
 * What is asked below a field of a document, kept for as long as the document is. Documents are
 * parsed once and asked again and again, mostly with the same page sizes.
 */
const known = new WeakMap<FieldNode, Known>();
const mostKept = 20;
const nothing: AskedByType = {};

/** What is asked below the field being resolved. Not to be changed: the next request gets it too. */
export function askedBelow(info: GraphQLResolveInfo): AskedByType {
  const [node] = info.fieldNodes;
  if (node === undefined || info.fieldNodes.length > 1) return freshlyAsked(info);
  let kept = known.get(node);
  if (!kept) {
    kept = { variableNames: [...variablesBelow(node, info)], byValues: new Map() };
    known.set(node, kept);
  }
  const values = JSON.stringify(kept.variableNames.map((name) => info.variableValues[name]));
  const again = kept.byValues.get(values);
  if (again) return again;
  const fresh = freshlyAsked(info);
  if (kept.byValues.size >= mostKept) kept.byValues.clear();
  kept.byValues.set(values, fresh);
  return fresh;
}

const freshlyAsked = (info: GraphQLResolveInfo): AskedByType =>
  (parseResolveInfo(info) as unknown as Asked | null)?.fieldsByTypeName ?? nothing;

function variablesBelow(node: FieldNode, { fragments }: GraphQLResolveInfo): Set<string> {
  const names = new Set<string>();
  const seen = new Set<string>();
  const collect = (part: Parameters<typeof visit>[0]): void => {
    visit(part, {
      [Kind.VARIABLE]: ({ name }) => {
        names.add(name.value);
      },
      [Kind.FRAGMENT_SPREAD]: ({ name }) => {
        const fragment = fragments[name.value];
        if (!fragment || seen.has(name.value)) return;
        seen.add(name.value);
        collect(fragment.selectionSet);
      },
    });
  };
  for (const directive of node.directives ?? []) collect(directive);
  if (node.selectionSet) collect(node.selectionSet);
  return names;
}
