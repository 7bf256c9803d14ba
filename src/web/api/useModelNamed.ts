import { useClient } from 'urql';
import { IntakeModelsDocument, type ItemKind } from '../gql/graphql.js';
import { modelName } from '../pages/intake/newItemDraft.js';

/** Finds the model that is called so; null for no name, undefined where no model has it. */
export function useModelNamed() {
  const client = useClient();
  return async (typed: string, itemKind: ItemKind): Promise<string | null | undefined> => {
    const text = typed.trim();
    if (text === '') return null;
    const answer = await client.query(IntakeModelsDocument, { text, itemKind }).toPromise();
    return answer.data?.models.nodes.find(
      (model) => modelName(model).toLowerCase() === text.toLowerCase(),
    )?.id;
  };
}
