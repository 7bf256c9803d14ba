import {
  GraphQLError,
  Kind,
  type ASTVisitor,
  type SelectionSetNode,
  type ValidationContext,
} from 'graphql';

/** The introspection query of current tools reaches 15. */
export const deepest = 20;

/** Refuses a document whose selections are nested too deeply, fragments included. */
export function limitDepth(context: ValidationContext): ASTVisitor {
  const known = new Map<SelectionSetNode, number>();
  const depthOf = (set: SelectionSetNode | undefined, open: ReadonlySet<string>): number => {
    if (!set) return 0;
    const measured = known.get(set);
    if (measured !== undefined) return measured;
    let depth = 0;
    for (const selection of set.selections) {
      if (selection.kind === Kind.FIELD) {
        depth = Math.max(depth, 1 + depthOf(selection.selectionSet, open));
      } else if (selection.kind === Kind.INLINE_FRAGMENT) {
        depth = Math.max(depth, depthOf(selection.selectionSet, open));
      } else if (!open.has(selection.name.value)) {
        // A circle of fragments is refused by another rule; here it must only not hang.
        const fragment = context.getFragment(selection.name.value);
        depth = Math.max(
          depth,
          depthOf(fragment?.selectionSet, new Set([...open, selection.name.value])),
        );
      }
    }
    known.set(set, depth);
    return depth;
  };
  return {
    OperationDefinition(node) {
      const depth = depthOf(node.selectionSet, new Set());
      if (depth <= deepest) return;
      context.reportError(
        new GraphQLError(
          `This query is nested ${depth} levels deep; ${deepest} is the most. Ask in two steps.`,
          { nodes: node },
        ),
      );
    },
  };
}
