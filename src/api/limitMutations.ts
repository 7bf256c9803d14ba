import type { ApolloServerPlugin } from '@apollo/server';
import {
  GraphQLError,
  Kind,
  OperationTypeNode,
  type DocumentNode,
  type FragmentDefinitionNode,
  type SelectionSetNode,
} from 'graphql';
import type { ApiContext } from './kit/apiContext.js';

const mostMutations = 10;

/** Bounds how much one request may do: aliases would otherwise repeat a mutation without end. */
export const limitMutations: ApolloServerPlugin<ApiContext> = {
  requestDidStart: () =>
    Promise.resolve({
      didResolveOperation: ({ document, operation }) => {
        if (operation?.operation !== OperationTypeNode.MUTATION) return Promise.resolve();
        const count = countFields(operation.selectionSet, document);
        if (count > mostMutations) {
          throw new GraphQLError(
            `One request may carry out ${mostMutations} mutations; this one has ${count}. Send them in several requests.`,
            { extensions: { code: 'TOO_MANY_MUTATIONS', http: { status: 400 } } },
          );
        }
        return Promise.resolve();
      },
    }),
};

/** Fields of a selection, with those that its fragments bring. Validation has ruled out circles. */
function countFields(set: SelectionSetNode, document: DocumentNode): number {
  return set.selections.reduce((count, selection) => {
    if (selection.kind === Kind.FIELD) return count + 1;
    if (selection.kind === Kind.INLINE_FRAGMENT) {
      return count + countFields(selection.selectionSet, document);
    }
    const fragment = document.definitions.find(
      (definition): definition is FragmentDefinitionNode =>
        definition.kind === Kind.FRAGMENT_DEFINITION &&
        definition.name.value === selection.name.value,
    );
    return count + (fragment ? countFields(fragment.selectionSet, document) : 0);
  }, 0);
}
