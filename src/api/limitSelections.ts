import {
  GraphQLError,
  Kind,
  type ASTVisitor,
  type SelectionSetNode,
  type ValidationContext,
} from 'graphql';

/** Far above what any screen asks for; far below what takes long to price. Our own choice. */
export const mostSelections = 20_000;

/**
 * Refuses a document that is short as written and huge once its fragments are put in: a chain of
 * fragments that each name the next ten times would take for ever to price, let alone to answer.
 */
export function limitSelections(context: ValidationContext): ASTVisitor {
  const known = new Map<SelectionSetNode, number>();
  const countOf = (set: SelectionSetNode | undefined, open: ReadonlySet<string>): number => {
    if (!set) return 0;
    const counted = known.get(set);
    if (counted !== undefined) return counted;
    let count = 0;
    for (const selection of set.selections) {
      if (selection.kind === Kind.FIELD) count += 1 + countOf(selection.selectionSet, open);
      else if (selection.kind === Kind.INLINE_FRAGMENT)
        count += countOf(selection.selectionSet, open);
      else if (!open.has(selection.name.value)) {
        const { value } = selection.name;
        count += countOf(context.getFragment(value)?.selectionSet, new Set([...open, value]));
      }
    }
    known.set(set, count);
    return count;
  };
  return {
    OperationDefinition(node) {
      if (countOf(node.selectionSet, new Set()) <= mostSelections) return;
      context.reportError(
        new GraphQLError(
          `With its fragments put in, this query names more than ${mostSelections} fields. Ask in several steps.`,
          { nodes: node },
        ),
      );
    },
  };
}
